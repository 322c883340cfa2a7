import { threeFigures } from '../recipe/threeFigures';
import { givenMlPerDay } from '../devices/doseTimes';
import type { Scenario } from '../scenario/schema';
import { flags, type FlagId } from '../trace/columns';
import { readColumn, type Trace } from '../trace/trace';
import { limewaterCap, type LimewaterCap } from './limewaterCap';
import { passed, type LineResult } from './lineResult';
import { lastOf, ledgerBetween, usePerDay } from './measures';
import type { Outcome, Stopped } from './outcome';
import { dryReservoir, suppliesOf, type DryReservoir, type Supplies } from './supplies';

/** What a trial says against the keeper's limits, in ids and numbers. */
export interface Verdict {
  /** No watched line was passed, and the trial ran to its end. */
  readonly insideLimits: boolean;
  /** Every line that was watched, and how it fared. */
  readonly lines: readonly LineResult[];
  /** The lines that were passed. */
  readonly broken: readonly LineResult[];
  /** Hours of the trial. */
  readonly hours: number;
  readonly stopped: Stopped | undefined;
  /** Whether the plan has a daily cycle to settle on. */
  readonly settled: boolean;
  readonly startDkh: number;
  readonly endDkh: number;
  readonly limewater: LimewaterCap | undefined;
  readonly dry: DryReservoir | undefined;
  readonly shortPumps: readonly ShortPump[];
  /** What food and nitrate take without any coral, where that is more than was typed as use. */
  readonly foodTakesDkhPerDay: number | undefined;
  readonly useMoves: UseMoves | undefined;
  readonly flags: readonly { readonly flag: FlagId; readonly firstH: number }[];
  readonly supplies: Supplies;
}

/** A pump whose hours are too few for what is set. */
export interface ShortPump {
  readonly name: string;
  readonly mlPerDay: number;
  readonly givenMlPerDay: number;
}

/** Use on the first day and on the last, where they differ. */
export interface UseMoves {
  readonly firstDkhPerDay: number;
  readonly lastDkhPerDay: number;
}

const shortPumpsOf = ({ dosers }: Scenario): ShortPump[] =>
  dosers.flatMap(({ name, mlPerDay, schedule }) => {
    const given = givenMlPerDay(schedule, mlPerDay);
    return given < mlPerDay * 0.999 ? [{ name, mlPerDay, givenMlPerDay: threeFigures(given) }] : [];
  });

function foodTakes({ corals }: Scenario, trace: Trace): number | undefined {
  const hours = trace.rows - 1;
  if (corals.measuredAs !== 'use' || hours < 24) return undefined;
  const used = usePerDay(trace, 0, 24);
  if (used < corals.useDkhPerDay + LEAST_USE_DKH) return undefined;
  const grown = trace.ledger.some(({ id, role }) => role === 'growth' && taken(trace, id) > 0);
  return grown ? undefined : used;
}
const taken = (trace: Trace, id: string): number => -ledgerBetween(trace, id, 0, 24);
/** Less than a test can tell. */
const LEAST_USE_DKH = 0.01;

/** Growth outside the laws' range is shown on its own chart: it is so common that it would dull. */
const TOLD_FLAGS = ['highPh', 'temperature', 'salinity'] as const satisfies FlagId[];

function flagsOf(trace: Trace): Verdict['flags'] {
  const bits = readColumn(trace, 'flags');
  return TOLD_FLAGS.flatMap((flag) => {
    const firstH = bits.findIndex((value) => (value & flags[flag].bit) !== 0);
    return firstH < 0 ? [] : [{ flag, firstH }];
  });
}

/** Corals take less as saturation falls: it flatters a plan that lets alkalinity sink. */
function useMovesOf(trace: Trace): UseMoves | undefined {
  const hours = trace.rows - 1;
  if (hours < 72) return undefined;
  const firstDkhPerDay = usePerDay(trace, 0, 24);
  const lastDkhPerDay = usePerDay(trace, hours - 24, hours);
  const least = Math.max(0.1 * firstDkhPerDay, 0.05);
  if (Math.abs(lastDkhPerDay - firstDkhPerDay) < least) return undefined;
  return { firstDkhPerDay, lastDkhPerDay };
}

/** What a trial says against the keeper's limits. */
export function verdictOf(scenario: Scenario, outcome: Outcome): Verdict {
  const { trace, stopped, settled, lines } = outcome;
  const limewater = stopped ? undefined : limewaterCap(scenario, outcome);
  const broken = passed(lines);
  const dry = dryReservoir(scenario, trace);
  return {
    ...{ insideLimits: broken.length === 0 && !stopped, lines, broken },
    ...{ hours: trace.rows - 1, stopped, settled, limewater, dry },
    startDkh: readColumn(trace, 'alkalinity_dkh')[0]!,
    endDkh: lastOf(trace, 'alkalinity_dkh'),
    shortPumps: shortPumpsOf(scenario),
    foodTakesDkhPerDay: foodTakes(scenario, trace),
    useMoves: useMovesOf(trace),
    flags: flagsOf(trace),
    supplies: suppliesOf(scenario, trace),
  };
}
