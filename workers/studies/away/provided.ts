import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { run, stateAfter } from '../../engine/run';
import { stillInside, type Today } from '../plan/breaches';
import { usesWithin, withUse } from '../plan/useEnds';
import type { SimulationOptions } from '../../engine/simulation';
import { LeftTank, type LeftRun } from './leftTank';
import { unattended } from './unattended';

/** How reservoir and bottles are left. */
export type ProvisionKind =
  /** As they are: all of it lasts. */
  | 'asIs'
  /** The reservoir as it is; whoever comes fills it up with plain water. */
  | 'toppedUp'
  /** The reservoir as it is; whoever comes fills it up with the same mix, made beforehand. */
  | 'mixed'
  /** More in the reservoir, or in bottles, of what is in them now. */
  | 'larger'
  /** More in the reservoir, of a weaker mix, so that even all of it at once does no harm. */
  | 'thinner'
  /** The reservoir with plain water. */
  | 'plain';

export interface Provision {
  readonly kind: ProvisionKind;
  /** The plan that runs until the keeper is back. */
  readonly scenario: Scenario;
  readonly refillEveryDays: number;
}

/** A provision replayed at the use and at either end of its doubt. */
export interface Provided extends Provision {
  /** Whole days in which nothing goes outside that is inside now, or farther outside than it is. */
  readonly insideDays: number;
  /** What goes outside first, and when; undefined when nothing does. */
  readonly breach: LineResult | undefined;
  /** Where alkalinity ends, dKH: at the use, and over all uses that are possible. */
  readonly endsDkh: { readonly asSet: number; readonly low: number; readonly high: number };
  /** How every watched line fared at the use itself. */
  readonly lines: readonly LineResult[];
  /** Those that are passed with the keeper at home, too. */
  readonly anyway: readonly LineResult[];
}

/** So many days show how far the tank is outside as it runs today. */
const TODAY_DAYS = 2;

/** The tank at each use with the keeper at home: what is outside then is outside anyway. */
export type AtHome = readonly { readonly use: number; readonly lines: Today }[];

export function atHome(
  now: Scenario,
  giveOrTakeDkhPerDay: number,
  options: SimulationOptions,
): AtHome {
  const plan = { ...now, days: TODAY_DAYS, additions: [], faults: [], responses: [] };
  const from = stateAfter({ ...plan, days: 0 }, options);
  return usesWithin(now.corals.useDkhPerDay, giveOrTakeDkhPerDay).map((use) => {
    const { lines } = run(withUse(plan, use), options, from);
    return { use, lines: lines.flatMap((line) => excusedBy(line, now)) };
  });
}

/** Where alkalinity stands outside already it may only come nearer; where it falls out, it is no excuse. */
function excusedBy(line: LineResult, { tank }: Scenario): LineResult[] {
  if (line.quantity !== 'alkalinity') return [line];
  const { alkalinityDkh: worst } = tank;
  const isOut = line.trouble === 'above' ? worst > line.limit : worst < line.limit;
  return isOut ? [{ ...line, worst }] : [];
}

/** The tank left alone with a provision. */
export const leftWith = ({ kind, scenario, refillEveryDays }: Provision, days: number): Scenario =>
  unattended(scenario, days, refillEveryDays, kind === 'mixed' ? 'mix' : 'plain');

const endOf = ({ run: own }: LeftRun): number => readColumn(own.trace, 'alkalinity_dkh').at(-1)!;

/** What becomes of a provision; `days` as long as the keeper is away. */
export function provided(
  { kind, scenario, refillEveryDays }: Provision,
  days: number,
  home: AtHome,
  options: SimulationOptions,
): Provided {
  const left = leftWith({ kind, scenario, refillEveryDays }, days);
  const tank = new LeftTank(left, options);
  const runs = home.map(({ use, lines }) => ({ lines, left: tank.run(withUse(left, use)) }));
  const breaches = runs
    .flatMap(({ lines, left: { run: own } }) =>
      own.lines.filter((line) => !stillInside(line, lines)),
    )
    .toSorted((a, b) => a.firstH! - b.firstH!);
  const stops = runs.map(({ left: { run: own } }) => own.stopped?.timeH ?? Infinity);
  const [breach] = breaches;
  const insideH = Math.min(days * 24, breach?.firstH ?? Infinity, ...stops);
  const { lines } = runs[0]!.left.run;
  const ends = runs.map((one) => endOf(one.left));
  return {
    ...{ kind, scenario, refillEveryDays, breach },
    insideDays: Math.floor(insideH / 24),
    endsDkh: { asSet: ends[0]!, low: Math.min(...ends), high: Math.max(...ends) },
    lines,
    anyway: lines.filter((line) => line.firstH !== undefined && stillInside(line, runs[0]!.lines)),
  };
}
