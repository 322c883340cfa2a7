import { pouredIn } from '../../../shared/events/addition';
import type { TankEvent } from '../../../shared/events/event';
import { changeOfWater } from '../../../shared/events/waterChange';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { noFactors } from '../../../shared/scenario/factors';
import type { Scenario } from '../../../shared/scenario/schema';
import type { ColumnId } from '../../../shared/trace/columns';
import { readColumn, type Trace } from '../../../shared/trace/trace';
import { plannedEvents } from '../../engine/plannedEvents';
import { takenOver } from '../../engine/goOn';
import { stateAfter } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import { TrialRun } from '../../engine/trialRun';
import { earlierOf, type RanUntil } from '../fit/turnedAt';
import { withUse } from '../plan/useEnds';
import type { Counted } from './share';

/** A log to be gone through again by the plan in force. */
export interface Past {
  readonly plan: Scenario;
  /** In order of time. */
  readonly readings: readonly Reading[];
  readonly ran: readonly RanUntil[];
  /** Whole hours of local time. */
  readonly startH: number;
  readonly endH: number;
  /** Hours since the start at which the accounts are to be cut. */
  readonly cutsH: readonly number[];
}

/** The tank as the plan says it went. */
export interface Course {
  readonly hourly: (column: ColumnId) => readonly number[];
  /** Between two of the cuts. */
  readonly between: (fromH: number, toH: number) => readonly Counted[];
  readonly endsH: number;
}

/** What is read and what is done in the same minute: the test comes first. */
const AFTER_H = 1 / 60;

const firstFrom = (
  { readings, startH }: Past,
  name: 'alkalinityDkh' | 'calciumMgPerL' | 'magnesiumMgPerL' | 'salinityPractical' | 'tempC',
): number | undefined =>
  readings.find((reading) => hoursOf(reading.at) >= startH && reading[name] !== undefined)?.[name];

/** The plan with the water that the readings begin with. */
export function pastScenario(past: Past): Scenario {
  const { plan, startH, endH } = past;
  const { tank } = plan;
  return {
    ...plan,
    ...{ days: (endH - startH) / 24, additions: [], faults: [], responses: [] },
    start: { ...plan.start, carbon: 'settledCycle', omegaReference: 0, clockHour: startH % 24 },
    tank: {
      ...tank,
      alkalinityDkh: firstFrom(past, 'alkalinityDkh') ?? tank.alkalinityDkh,
      calciumMgPerL: firstFrom(past, 'calciumMgPerL') ?? tank.calciumMgPerL,
      magnesiumMgPerL: firstFrom(past, 'magnesiumMgPerL') ?? tank.magnesiumMgPerL,
      salinityPractical: firstFrom(past, 'salinityPractical') ?? tank.salinityPractical,
      tempC: firstFrom(past, 'tempC') ?? tank.tempC,
    },
  };
}

/** Whether the log has water changes of its own; else the plan's are taken to have been done. */
export const changesLogged = ({ readings, startH }: Past): boolean =>
  readings.some(
    ({ at, waterChangePercent }) => waterChangePercent !== undefined && hoursOf(at) >= startH,
  );

function eventsOf(past: Past, scenario: Scenario): TankEvent[] {
  const { readings, startH } = past;
  const done = readings.flatMap(({ at, additive, grams, waterChangePercent }) => {
    const timeH = hoursOf(at) - startH + AFTER_H;
    if (timeH < 0) return [];
    return [
      ...(waterChangePercent ? [changeOfWater(scenario, waterChangePercent)(timeH)] : []),
      ...(additive && grams ? [pouredIn(timeH, additive, grams)] : []),
    ];
  });
  const planned = changesLogged(past) ? [] : plannedEvents(scenario);
  return [...done, ...planned].toSorted((a, b) => a.timeH - b.timeH);
}

const tankOf = ({ vessels }: TankState): Float64Array => vessels[0]!.amounts;

/** Goes through the log again by what was dosed and done, at a use of the corals on the first day. */
export function pastRun(
  past: Past,
  scenario: Scenario,
  useDkhPerDay: number,
  options: SimulationOptions,
): Course {
  const { startH, endH, ran, cutsH } = past;
  const lastH = endH - startH;
  const used = withUse(scenario, useDkhPerDay);
  const earlier = earlierOf(ran, startH, lastH);
  const turns = earlier.map(({ untilH }) => Math.round(untilH));
  const marks = [...new Set([...cutsH, ...turns, lastH])]
    .filter((timeH) => timeH > 0 && timeH <= lastH)
    .toSorted((a, b) => a - b);
  const dosedAt = (timeH: number): Scenario => ({
    ...used,
    ...earlier[turns.findIndex((untilH) => untilH > timeH)]?.dosing,
  });
  const done = { events: eventsOf(past, used), factors: options.factors ?? noFactors };
  let state = stateAfter({ ...dosedAt(0), days: 0 }, options);
  const traces: Trace[] = [];
  const counted: (Counted & { readonly fromH: number; readonly toH: number })[] = [];
  for (const untilH of marks) {
    const stretch = { ...dosedAt(state.timeH), days: untilH / 24 };
    const goes = { plan: takenOver(stretch, state, done), from: state };
    const trial = new TrialRun(stretch, options, undefined, undefined, goes);
    trial.advance(Infinity);
    const { trace, accounts, stopped } = trial.result();
    traces.push(trace);
    if (stopped) break;
    const after = trial.state();
    const cut = { fromH: state.timeH, toH: untilH };
    counted.push({ ...cut, before: tankOf(state), after: tankOf(after), accounts });
    state = after;
  }
  return {
    hourly: (column) =>
      traces.flatMap((trace, i) => [...readColumn(trace, column).subarray(i > 0 ? 1 : 0)]),
    between: (fromH, toH) => counted.filter((one) => one.fromH >= fromH && one.toH <= toH),
    endsH: counted.at(-1)?.toH ?? 0,
  };
}
