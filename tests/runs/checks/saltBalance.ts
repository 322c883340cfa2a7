import { additives } from '../../../shared/species/additives';
import { densityKgPerM3, meqPerLFromDkh } from '../../../shared/seawater';
import { readColumn, readLedger } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

const volumeL = 300;

/** Salinity of a tank that nobody tops off: the salt stays, by mass. */
function concentrated(litresPerDay: number, days: number, kLaPerH: number): Check {
  const { trace } = run(
    quietTank({
      days,
      tank: { volumeL },
      start: { carbon: 'airEquilibrium' },
      gas: { kLaPerH },
      evaporation: { litresPerDay },
    }),
  );
  const startKg = (volumeL * densityKgPerM3(25, 35)) / 1000;
  const lostKg = (litresPerDay * days * densityKgPerM3(25, 0)) / 1000;
  return {
    id: `salt/${litresPerDay} L/day for ${days} days/kLa ${kLaPerH}`,
    quantity: 'salinity without top-off',
    source: 'm0 / (m0 − ρw·E·t), by mass',
    howVerified: 'computed',
    expected: (35 * startKg) / (startKg - lostKg),
    got: readColumn(trace, 'salinity_ppt').at(-1)!,
    // Carbon dioxide that leaves with the rest counts as salt: without it the sum is exact.
    tolerance: kLaPerH > 0 ? 0.005 : 1e-6,
    unit: 'S',
  };
}

/** Sodium carbonate and calcium chloride against corals: what is left is table salt. */
function twoPart(): Check {
  const useDkhPerDay = 1;
  const molPerDay = (meqPerLFromDkh(useDkhPerDay) * volumeL) / 2000;
  const pump = (additive: 'sodiumCarbonate' | 'calciumChlorideDihydrate') => ({
    name: additive,
    recipe: [{ additive, gramsPerL: molPerDay * additives[additive].molarMassG * 10 }],
    mlPerDay: 100,
    stockL: 20,
  });
  const { trace } = run(
    quietTank({
      days: 100,
      tank: { volumeL },
      corals: { useDkhPerDay },
      evaporation: { litresPerDay: 3 },
      topOff: { reservoirL: 400, refillEveryDays: 0, deadBandL: 0.05 },
      dosers: [pump('sodiumCarbonate'), pump('calciumChlorideDihydrate')],
    }),
  );
  const salinity = readColumn(trace, 'salinity_ppt');
  return {
    id: 'salt/two-part',
    quantity: 'salinity that a two-part pair leaves for each dKH',
    source: '1 mol NaCl for each equivalent: 20.8 mg/L per dKH',
    howVerified: 'computed',
    expected: 0.02,
    got: (salinity.at(-1)! - salinity[0]!) / readLedger(trace, 'stock1').at(-1)!,
    tolerance: 0.001,
    unit: 'S per dKH',
  };
}

export const saltBalanceChecks = (): Check[] => [
  concentrated(3, 10, 1.2),
  concentrated(6, 10, 1.2),
  concentrated(6, 10, 0),
  concentrated(4, 20, 0),
  twoPart(),
];
