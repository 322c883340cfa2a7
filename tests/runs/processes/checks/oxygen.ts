import { additives } from '../../../../shared/species/additives';
import { oxygenKLaPerH, oxygenSaturationUmolPerKg } from '../../../../shared/seawater/oxygen';
import { readColumn } from '../../../../shared/trace/trace';
import { run } from '../../../../workers/engine/run';
import type { Simulation } from '../../../../workers/engine/simulation';
import type { Check } from '../../../reference/check';
import { quietTank } from '../../quietTank';
import { ammoniumAtStart, changeOver, mol, onlyTank } from '../onlyTank';

const VOLUME_L = 300;
/** So little breathes beside what is looked at, mmol/L/day; 0 would leave it to a word. */
const HARDLY = 1e-9;
const hardly = { oxygen: { respirationMmolPerLPerDay: HARDLY } };
const PER_CARBON = 1.1;

const measures = {
  oxygen: (tank: Simulation) => mol(tank, 'O2'),
  carbon: (tank: Simulation) => mol(tank, 'DIC'),
  nitrate: (tank: Simulation) => mol(tank, 'NO3'),
  acetate: (tank: Simulation) => mol(tank, 'acetate'),
  formate: (tank: Simulation) => mol(tank, 'formate'),
};
type Measure = keyof typeof measures;

/** Oxygen that comes (+) or goes (−) with a mole of something else. */
function perMole(tank: Simulation, of: Measure, fromH = 0, hours = 2): number {
  tank.advanceTo(fromH);
  const change = changeOver(tank, fromH + hours, measures);
  return change.oxygen / change[of];
}

/** Dark and closed: oxygen falls as fast as is breathed, typed or by the word for stocking. */
function closedDarkChecks(): Check[] {
  const breathed: [name: string, oxygen: object, mmolPerLPerDay: number][] = [
    ['typed', { respirationMmolPerLPerDay: 1.7, stocking: 'few' }, 1.7],
    ['few', { stocking: 'few' }, 0.3],
    ['usual', { stocking: 'usual' }, 0.6],
    ['crowded', { stocking: 'crowded' }, 1.2],
  ];
  return breathed.map(([name, oxygen, mmolPerLPerDay]): Check => {
    const change = changeOver(onlyTank({ oxygen }), 2, measures);
    return {
      id: `oxygen/closed-dark-${name}`,
      quantity: 'fall in a closed dark tank against what is breathed',
      source: name === 'typed' ? 'by hand' : 'common practice, by hand',
      howVerified: 'computed',
      expected: 1,
      got: change.oxygen / ((-mmolPerLPerDay * VOLUME_L * 2) / 24 / 1000),
      ...{ tolerance: 1e-9, unit: '-' },
    };
  });
}

/** The same in water that has grown warmer or colder than it was typed for: Q10, by hand. */
function warmerChecks(): Check[] {
  const cases: [tempC: number, oxygen: object, mmolPerLPerDay: number][] = [
    [30, { stocking: 'usual' }, 0.6 * Math.sqrt(2)],
    [35, { stocking: 'few', respirationPerTenDegrees: 3 }, 0.3 * 3],
    [20, { respirationMmolPerLPerDay: 1.7 }, 1.7 / Math.sqrt(2)],
    [30, { stocking: 'usual', respirationPerTenDegrees: 1 }, 0.6],
  ];
  return cases.map(([tempC, oxygen, mmolPerLPerDay]): Check => {
    const tank = onlyTank({ oxygen, temperaturePlan: [{ day: 0.01, tempC }] });
    tank.advanceTo(1);
    const change = changeOver(tank, 3, measures);
    return {
      id: `oxygen/closed-dark-at-${tempC}-${JSON.stringify(oxygen)}`,
      quantity: 'fall in a closed dark tank that has left its temperature, against Q10',
      source: 'common practice, by hand',
      howVerified: 'computed',
      expected: 1,
      got: change.oxygen / ((-mmolPerLPerDay * VOLUME_L * 2) / 24 / 1000),
      ...{ tolerance: 1e-9, unit: '-' },
    };
  });
}

/** What each reaction takes or gives, by the electrons that it moves. */
function reactionChecks(): Check[] {
  const salt = (additive: 'calciumAcetate' | 'calciumFormate') =>
    onlyTank({
      ...hardly,
      filter: { oxidationPerH: 1 },
      additions: [{ day: 1, hour: 1, additive, grams: 0.005 * additives[additive].molarMassG }],
    });
  const lit = { onHour: 0, hours: 12 };
  const dark = { onHour: 12, hours: 0 };
  const grossMmolPerLPerDay = 0.5;
  const rows: [what: string, expected: number, got: number][] = [
    ['acetate', 2, perMole(salt('calciumAcetate'), 'acetate', 1.01)],
    ['formate', 0.5, perMole(salt('calciumFormate'), 'formate', 1.01)],
    [
      'nitrate made',
      -2,
      perMole(
        onlyTank({ ...hardly, filter: { nitrificationPerH: 1 } }, undefined, [
          ammoniumAtStart(0.5),
        ]),
        'nitrate',
      ),
    ],
    [
      'carbon breathed',
      -PER_CARBON,
      perMole(
        onlyTank({ ...hardly, lights: dark, photosynthesis: { grossMmolPerLPerDay } }),
        'carbon',
      ),
    ],
    [
      'carbon fixed in the light',
      -PER_CARBON,
      perMole(
        onlyTank({
          ...hardly,
          lights: lit,
          photosynthesis: { grossMmolPerLPerDay, respiredShare: 0 },
        }),
        'carbon',
      ),
    ],
    [
      'carbon fixed in a refugium',
      -PER_CARBON,
      perMole(
        onlyTank({
          ...hardly,
          photosynthesis: { refugiumMmolPerLPerDay: 0.5, refugiumFromHour: 0, refugiumHours: 12 },
        }),
        'carbon',
      ),
    ],
    [
      // Nitrate takes 5 electrons of the 5.5 that 1.25 carbon of quotient 1.1 gives.
      'nitrate turned to gas',
      1.25 * PER_CARBON - 1.25,
      perMole(
        onlyTank({
          ...hardly,
          tank: { nitrateMgPerL: 50 },
          filter: { denitrificationPerDay: 0.5 },
        }),
        'nitrate',
      ),
    ],
    [
      'carbon of food',
      -PER_CARBON,
      perMole(onlyTank({ ...hardly, food: { gramsPerDay: 3, releasedPercent: 0 } }), 'carbon'),
    ],
    [
      'carbon breathed, at a quotient of 1.3',
      -1.3,
      perMole(
        onlyTank({
          oxygen: { respirationMmolPerLPerDay: HARDLY, perCarbon: 1.3 },
          lights: dark,
          photosynthesis: { grossMmolPerLPerDay },
        }),
        'carbon',
      ),
    ],
  ];
  return rows.map(([what, expected, got]) => ({
    id: `oxygen/per-${what.replaceAll(' ', '-')}`,
    quantity: `oxygen for a mole: ${what}`,
    source: 'a quarter of the electrons moved',
    howVerified: 'computed',
    ...{ expected, got, tolerance: 1e-6, unit: 'mol/mol' },
  }));
}

const KLA = 1.2;
const GROSS = 0.5;
const LIT_H = 10;
const balanced = (oxygen: object) =>
  quietTank({
    days: 3,
    gas: { kLaPerH: KLA, enhancement: 'off' },
    lights: { onHour: 9, hours: LIT_H },
    photosynthesis: { grossMmolPerLPerDay: GROSS },
    oxygen,
  });

/** Day and night that give back what they take, under the air: a square wave that relaxes. */
function dayAndNightChecks(): Check[] {
  const { trace } = run(balanced({ respirationMmolPerLPerDay: HARDLY }));
  const percent = readColumn(trace, 'oxygen_saturation_pct');
  const k = oxygenKLaPerH(KLA, 25);
  // ρ(S 35, 25 °C) of science.md, kg/L.
  const saturated = oxygenSaturationUmolPerKg(25, 35) * 1.02334;
  const night = (-PER_CARBON * GROSS * 1000) / 24 / k / saturated;
  const day = night + (PER_CARBON * GROSS * 1000) / LIT_H / k / saturated;
  const [overDay, overNight] = [Math.exp(-k * LIT_H), Math.exp(-k * (24 - LIT_H))];
  const offPercent =
    (100 * (day * (1 - overDay) + night * (1 - overNight) * overDay)) / (1 - overDay * overNight);
  const onPercent = offPercent * overNight + 100 * night * (1 - overNight);
  const mean = percent.slice(24, 48).reduce((sum, value) => sum + value, 0) / 24;
  const steady = run(quietTank({ gas: { kLaPerH: KLA }, oxygen: { stocking: 'crowded' } })).trace;
  const rows: [quantity: string, expected: number, got: number, tolerance: number][] = [
    ['saturation at lights-off', 100 + offPercent, percent[24 + 19]!, 0.01],
    ['saturation at lights-on', 100 + onPercent, percent[24 + 9]!, 0.01],
    ['the same on the first day', 100 + onPercent, percent[9]!, 0.01],
    ['mean saturation of a day in balance', 100, mean, 1],
    [
      'saturation where breath and air balance',
      100 * (1 - (1.2 * 1000) / 24 / k / saturated),
      readColumn(steady, 'oxygen_saturation_pct').at(-1)!,
      0.001,
    ],
  ];
  return rows.map(([quantity, expected, got, tolerance]) => ({
    id: `oxygen/day-${quantity.replaceAll(' ', '-')}`,
    ...{ quantity, source: 'a square wave that relaxes, by hand', howVerified: 'computed' },
    ...{ expected, got, tolerance, unit: '%' },
  }));
}

export const oxygenRunChecks = (): Check[] => [
  ...closedDarkChecks(),
  ...warmerChecks(),
  ...reactionChecks(),
  ...dayAndNightChecks(),
];
