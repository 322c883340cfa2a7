import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { run } from '../../engine/run';
import { stillInside, type Today } from '../plan/breaches';
import { atRest } from '../plan/atRest';
import { usesWithin } from '../plan/useEnds';
import type { SimulationOptions } from '../../engine/simulation';
import { emptiesFirst, type Empties, type Vessel } from './empties';
import { LeftTank, type LeftRun } from './leftTank';
import { unattended } from './unattended';

/** How the reservoir is left. */
export type ProvisionKind =
  /** With what is in it now. */
  | 'filled'
  /** The same; whoever comes fills it up with plain water. */
  | 'toppedUp'
  /** The same; whoever comes fills it up with the same mix, made beforehand. */
  | 'mixed'
  /** With a weaker mix, so that even all of it at once does no harm. */
  | 'thinner'
  /** With plain water. */
  | 'plain';

export interface Provision {
  readonly kind: ProvisionKind;
  /** The plan that runs until the keeper is back, with the litres that are left. */
  readonly scenario: Scenario;
  /** Whoever comes fills up the reservoir every so many days; 0: it lasts. */
  readonly refillEveryDays: number;
  /** Pumps, counted from 0, whose bottles whoever comes fills up. */
  readonly refilledPumps: readonly number[];
}

/** A provision replayed at the use and at either end of its doubt. */
export interface Provided extends Provision {
  /** Whole days in which nothing goes outside that is inside now, or farther outside than it is, and nothing stands empty. */
  readonly insideDays: number;
  /** What goes outside first, and when; undefined when nothing does. */
  readonly breach: LineResult | undefined;
  /** What may stand empty first before the keeper is back; undefined where everything lasts. */
  readonly empties: Empties | undefined;
  /** Where alkalinity ends, dKH: at the use, and over all uses that are possible. */
  readonly endsDkh: { readonly asSet: number; readonly low: number; readonly high: number };
  /** How every watched line fared at the use itself. */
  readonly lines: readonly LineResult[];
  /** Those that are passed with the keeper at home, too. */
  readonly anyway: readonly LineResult[];
}

/** So many days show how far the tank is outside as it runs today. */
const TODAY_DAYS = 2;

/** The tank at each use, and with the keeper at home: what is outside then is outside anyway. */
export type AtHome = readonly {
  readonly at: (scenario: Scenario) => Scenario;
  readonly lines: Today;
}[];

export function atHome(
  now: Scenario,
  giveOrTakeDkhPerDay: number,
  options: SimulationOptions,
): AtHome {
  const plan = { ...now, days: TODAY_DAYS, additions: [], faults: [], responses: [] };
  const resting = atRest(now, options);
  return usesWithin(now.corals.useDkhPerDay, giveOrTakeDkhPerDay).map((use) => {
    const at = (scenario: Scenario) => resting(scenario, use);
    const { lines } = run(at(plan), options);
    return { at, lines: lines.flatMap((line) => excusedBy(line, now)) };
  });
}

/** Where alkalinity stands outside already it may only come nearer; where it falls out, it is no excuse. */
function excusedBy(line: LineResult, { tank }: Scenario): LineResult[] {
  if (line.quantity !== 'alkalinity') return [line];
  const { alkalinityDkh: worst } = tank;
  const isOut = line.trouble === 'above' ? worst > line.limit : worst < line.limit;
  return isOut ? [{ ...line, worst }] : [];
}

const LARGEST_BOTTLE_L = quantityAt(['dosers', 0, 'stockL']).quantity.max;

/** The tank left alone with a provision: a bottle that is filled up in time is never empty. */
export function leftWith(
  { kind, scenario, refillEveryDays, refilledPumps }: Provision,
  days: number,
): Scenario {
  const dosers = scenario.dosers.map((one, i) =>
    refilledPumps.includes(i) ? { ...one, stockL: LARGEST_BOTTLE_L } : one,
  );
  const plan = { ...scenario, dosers };
  return unattended(plan, days, refillEveryDays, kind === 'mixed' ? 'mix' : 'plain');
}

const endOf = ({ run: own }: LeftRun): number => readColumn(own.trace, 'alkalinity_dkh').at(-1)!;

/** What a provision is held against. */
interface Absence {
  /** As long as the keeper is away. */
  readonly days: number;
  readonly vessels: readonly Vessel[];
  readonly home: AtHome;
  /** What lasts no longer than this is of no interest. */
  readonly atLeastDays?: number | undefined;
}

/** What becomes of a provision; undefined where it is found to last no longer than another. */
export function provided(
  provision: Provision,
  { days, vessels, home, atLeastDays = -1 }: Absence,
  options: SimulationOptions,
): Provided | undefined {
  const left = leftWith(provision, days);
  const empties = emptiesFirst(provision, vessels);
  const runs: LeftRun[] = [];
  const breaches: LineResult[] = [];
  let insideDays = Math.floor(Math.min(days, empties?.days ?? Infinity));
  for (const { at, lines } of home) {
    if (insideDays <= atLeastDays) return undefined;
    const own = at(left);
    const found = new LeftTank(own, options).run(own);
    const passed = found.run.lines.filter((line) => !stillInside(line, lines));
    const endsH = [found.run.stopped?.timeH, ...passed.map(({ firstH }) => firstH)];
    insideDays = Math.min(insideDays, ...endsH.map((h) => Math.floor((h ?? Infinity) / 24)));
    runs.push(found);
    breaches.push(...passed);
  }
  if (insideDays <= atLeastDays) return undefined;
  const [breach] = breaches.toSorted((a, b) => a.firstH! - b.firstH!);
  const { lines } = runs[0]!.run;
  const ends = runs.map(endOf);
  return {
    ...{ ...provision, breach, empties, insideDays, lines },
    endsDkh: { asSet: ends[0]!, low: Math.min(...ends), high: Math.max(...ends) },
    anyway: lines.filter((line) => line.firstH !== undefined && stillInside(line, home[0]!.lines)),
  };
}
