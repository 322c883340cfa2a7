import { withValue } from '../../../shared/scenario/change';
import { quantityAt, type FieldPath } from '../../../shared/scenario/fields';
import { newFault } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';
import { watchedLines, type Line } from '../../../shared/verdict/lines';
import { usualSpreads, type Spreads } from '../../../shared/verdict/spreads';
import { settle } from '../../engine/settle';
import { TrialRun } from '../../engine/trialRun';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { drawsOf, memberOf } from './member';

/** What a keeper may change to keep a full dump inside the limits. */
export const levers = {
  reservoirL: ['topOff', 'reservoirL'],
  gramsPerL: ['topOff', 'gramsPerL'],
  pumpLPerH: ['topOff', 'pumpLPerH'],
  runLimitMinPerH: ['topOff', 'runLimitMinPerH'],
} as const satisfies Record<string, FieldPath>;

export type Lever = keyof typeof levers;

type Fault = Scenario['faults'][number];

/** A dump is followed for so long at most, h. */
const LONGEST_H = 120;

/** The tank at an hour of the day for as long as something goes in, with nothing else that moves it. */
function dumped(scenario: Scenario, clockHour: number, hours: number, stuck: Fault): Scenario {
  return {
    ...scenario,
    days: Math.ceil(hours) / 24,
    start: { ...scenario.start, clockHour },
    // A dump is over before a season has moved anything.
    evaporation: { ...scenario.evaporation, factor: '1' },
    room: { ...scenario.room, co2Factor: '1' },
    topOff: { ...scenario.topOff, refillEveryDays: 0 },
    // Chalk that falls out would flatter the dump, and is no more than an illustration.
    precipitation: { ...scenario.precipitation, mode: 'off' },
    waterChanges: { ...scenario.waterChanges, percent: 0 },
    additions: [],
    responses: [],
    faults: [{ ...stuck, day: 1, hour: clockHour, endsAfterH: hours + 1 }],
  };
}

/** The whole reservoir goes in from an hour of the day on, whatever else would stop it. */
export function dumpAt(scenario: Scenario, clockHour: number, lever?: Lever): Scenario {
  const { topOff } = scenario;
  const limited = lever === 'runLimitMinPerH' && topOff.runLimitMinPerH > 0;
  const dutyShare = limited ? Math.min(1, topOff.runLimitMinPerH / 60) : 1;
  const hours = Math.min(LONGEST_H, topOff.reservoirL / (topOff.pumpLPerH * dutyShare) + 0.1);
  const stuck = newFault('topOffOn', {
    ...{ secondSwitch: 'fails', runLimit: limited ? 'works' : 'fails' },
  });
  const plan = { ...scenario, topOff: { ...topOff, lossPercentPerDay: 0, runLimitMinPerDay: 0 } };
  return dumped(plan, clockHour, hours, stuck);
}

/** The whole bottle of a dosing pump, counted from 0, goes in from an hour of the day on. */
export function bottleDumpAt(scenario: Scenario, clockHour: number, pump: number): Scenario {
  const { stockL, schedule } = scenario.dosers[pump]!;
  const hours = Math.min(LONGEST_H, (stockL * 1000) / (schedule.pumpMlPerMin * 60) + 0.1);
  return dumped(scenario, clockHour, hours, newFault('doserOn', { pump: pump + 1 }));
}

/** How far beyond its line the worst is, in shares of the line; negative inside. */
function excessOf(line: Line, worst: number): number {
  const beyond = line.trouble === 'above' ? worst - line.limit : line.limit - worst;
  return beyond / Math.max(1e-6, Math.abs(line.limit));
}

/** The worst excess over the chosen lines during and right after a dump. */
export function excess(
  dump: Scenario,
  chosen: readonly string[],
  options: SimulationOptions = usualOptions,
): number {
  const lines = watchedLines(dump).filter(({ id }) => chosen.includes(id));
  const trial = new TrialRun(dump, options, { lines, fromH: 0 });
  trial.advance(Infinity);
  return Math.max(...lines.map((line, i) => excessOf(line, trial.worst[i]!.value)));
}

/** The hour of the day at which a dump is worst, of the reservoir or of a bottle: every three hours are tried. */
export function worstHour(
  scenario: Scenario,
  chosen: readonly string[],
  dump: (scenario: Scenario, hour: number) => Scenario = dumpAt,
): number {
  const hours = [0, 3, 6, 9, 12, 15, 18, 21];
  const near = settle(dump(scenario, hours[0]!), usualOptions);
  const found = hours.map((hour) =>
    excess(dump(scenario, hour), chosen, { ...usualOptions, near }),
  );
  return hours[found.indexOf(Math.max(...found))]!;
}

export const withLever = (scenario: Scenario, lever: Lever, value: number): Scenario => {
  const path: FieldPath = levers[lever];
  const { min, max } = quantityAt(path).quantity;
  return withValue(scenario, path, Math.max(min, Math.min(max, value)));
};

/** A tank of an ensemble with the lever moved; everyone's draws are the same at every value. */
export const dumpOfMember = (
  scenario: Scenario,
  hour: number,
  lever: Lever | undefined,
  seed: number,
  index: number,
  spreads: Spreads = usualSpreads,
): Scenario =>
  dumpAt(memberOf(scenario, { ...spreads, hour: 0 }, drawsOf(seed, index)), hour, lever);
