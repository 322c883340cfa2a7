import { densityKgPerM3 } from '../../../shared/seawater';
import { saltKg, solutionKg } from '../../../shared/species/block';
import type { Scenario } from '../../../shared/scenario/schema';
import { compile } from '../../../workers/engine/compile';
import { Simulation } from '../../../workers/engine/simulation';
import { SALT_G_PER_KG_PER_PSU } from '../../../shared/water/referenceSeawater';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

const SECOND_H = 1 / 3600;
const freshKgPerL = densityKgPerM3(25, 0) / 1000;

/** The first moment, to a tenth of a second, at which a pipe is open (or shut) after `fromH`. */
export function switchMoment(scenario: Scenario, pipeId: string, open: boolean, guessH: number) {
  const simulation = new Simulation(compile(scenario));
  const pipe = simulation.plan.devices
    .flatMap(({ pipes }) => pipes)
    .find(({ id }) => id === pipeId)!;
  simulation.advanceTo(guessH - 30 * SECOND_H);
  if (pipe.kgPerH > 0 === open) return NaN;
  while (simulation.timeH < guessH + 30 * SECOND_H) {
    simulation.advanceTo(simulation.timeH + SECOND_H / 10);
    if (pipe.kgPerH > 0 === open) return simulation.timeH;
  }
  return NaN;
}

/** Hours in which a tank's volume changes by so much, water alone coming or going. */
export function hoursToChange(scenario: Scenario, litres: number, freshLPerH: number): number {
  const { tank } = compile(scenario).books;
  const salt = saltKg(tank);
  const volumeAfter = (hours: number) => {
    const kg = solutionKg(tank) + hours * freshLPerH * freshKgPerL;
    return (1000 * kg) / densityKgPerM3(25, ((salt / kg) * 1000) / SALT_G_PER_KG_PER_PSU);
  };
  let hours = litres / freshLPerH;
  for (let i = 0; i < 20; i++) hours *= litres / (volumeAfter(hours) - volumeAfter(0));
  return hours;
}

const evaporationLPerDay = 4;
const pumpLPerH = 3;
const deadBandL = 0.5;

const tankWith = (topOff: object, litresPerDay = evaporationLPerDay) =>
  quietTank({
    days: 3,
    start: { carbon: 'airEquilibrium' },
    gas: { kLaPerH: 0 },
    evaporation: { litresPerDay },
    topOff: { reservoirL: 20, refillEveryDays: 0, pumpLPerH, deadBandL, ...topOff },
  });

/** A pump slower than evaporation never fills the tank: it runs until the reservoir is dry. */
const slow = tankWith({ pumpLPerH: 0.1, reservoirL: 2 }, 12);
const usual = tankWith({});
const onH = hoursToChange(usual, -deadBandL, -evaporationLPerDay / 24);
const fillH = hoursToChange(usual, deadBandL, pumpLPerH - evaporationLPerDay / 24);
const slowOnH = hoursToChange(slow, -deadBandL, -12 / 24);
const dosing = quietTank({
  dosers: [
    {
      name: 'a',
      recipe: [],
      mlPerDay: 60,
      schedule: { way: 'spread', fromHour: 7.5, hours: 2.25 },
      stockL: 2,
    },
  ],
});

const moments: [string, Scenario, string, boolean, number][] = [
  ['the pump starts when half a litre has evaporated', usual, 'topOff', true, onH],
  ['the pump stops when half a litre is back', usual, 'topOff', false, onH + fillH],
  ['the pump stops when the reservoir is dry', slow, 'topOff', false, slowOnH + 20],
  ['the dosing pump starts at its hour', dosing, 'stock1', true, 7.5],
  ['the dosing pump stops after its hours', dosing, 'stock1', false, 9.75],
];

export const switchesChecks = (): Check[] =>
  moments.map(([quantity, scenario, pipe, open, expectedH]) => ({
    id: `switch/${quantity.replaceAll(' ', '-')}`,
    quantity,
    source: 'arithmetic with the mass of water and EOS-80',
    howVerified: 'computed',
    expected: expectedH * 3600,
    got: switchMoment(scenario, pipe, open, expectedH) * 3600,
    tolerance: 1,
    unit: 's',
  }));
