import { oldestFirst, type Check } from '../../shared/log/check';
import { inOrder, readingNames, type Reading } from '../../shared/log/reading';
import type { TankLog } from '../../shared/log/tankLog';
import type { BenchPlans } from './plans';
import { same } from './same';
import type { Tank } from './tanks';

/** A reading as one text: two that say the same of the same moment are one. */
export const said = (reading: Reading): string =>
  JSON.stringify(readingNames.map((name) => reading[name] ?? null));

/** The same of what was tested; of one thing that both have tested, the newer counts. */
function mergeChecks(base: readonly Check[], mine: readonly Check[], theirs: readonly Check[]) {
  const has = (list: readonly Check[], one: Check) => list.some((other) => same(other, one));
  const kept = base.filter((one) => has(mine, one) && has(theirs, one));
  const added = [...mine, ...theirs].filter((one) => !has(base, one));
  return oldestFirst([...kept, ...added]);
}

/** What both have, and what either has added; gone is what one of the two took out. */
export function mergeLogs(base: TankLog, mine: TankLog, theirs: TankLog): TankLog {
  const [old, ours, others] = [base, mine, theirs].map(
    ({ readings }) => new Set(readings.map(said)),
  );
  const kept = base.readings.filter((one) => ours!.has(said(one)) && others!.has(said(one)));
  const added = new Map(
    [...mine.readings, ...theirs.readings]
      .map((reading) => [said(reading), reading] as const)
      .filter(([words]) => !old!.has(words)),
  );
  const settingsOf = (log: TankLog) => ({ ...log, readings: [], checks: [] });
  const settings = same(settingsOf(mine), settingsOf(base)) ? theirs : mine;
  return {
    ...settings,
    readings: inOrder([...kept, ...added.values()]),
    checks: mergeChecks(base.checks, mine.checks, theirs.checks),
  };
}

interface MergedBench {
  readonly bench: BenchPlans;
  /** The other window's bench, where one of the two parts cannot stand beside ours. */
  readonly aside: BenchPlans | undefined;
}

const runsBy = ({ plans, since, before }: BenchPlans) => [plans[0], since, before];
const trials = ({ plans }: BenchPlans) => plans.slice(1);

/** What the tank runs by and what is tried are two parts; who has changed one alone has it. */
export function mergeBenches(base: BenchPlans, mine: BenchPlans, theirs: BenchPlans): MergedBench {
  const ours = (part: (bench: BenchPlans) => unknown) => !same(part(mine), part(base));
  const clash = (part: (bench: BenchPlans) => unknown) =>
    ours(part) && !same(part(theirs), part(base)) && !same(part(mine), part(theirs));
  const today = ours(runsBy) ? mine : theirs;
  const tried = ours(trials) ? mine : theirs;
  const plans = [today.plans[0]!, ...trials(tried)];
  const wanted = same(mine.selected, base.selected) ? theirs.selected : mine.selected;
  const selected = plans.find(({ id }) => id === wanted) ?? plans.at(-1)!;
  return {
    bench:
      today === tried && selected.id === today.selected
        ? today
        : { plans, selected: selected.id, since: today.since, before: today.before },
    aside: clash(runsBy) || clash(trials) ? theirs : undefined,
  };
}

export interface Merged {
  readonly tank: Tank;
  /** Plans of the other window that cannot stand beside ours: kept as they were. */
  readonly aside: BenchPlans | undefined;
}

/**
 * One tank out of two that began alike: a part that only one window has changed is that window's;
 * of a part that both have changed, ours stays and theirs is put aside.
 */
export function mergeTanks(base: Tank, mine: Tank, theirs: Tank): Merged {
  const { bench, aside } = mergeBenches(base.bench, mine.bench, theirs.bench);
  return {
    tank: {
      id: mine.id,
      name: same(mine.name, base.name) ? theirs.name : mine.name,
      bench,
      log: mergeLogs(base.log, mine.log, theirs.log),
    },
    aside,
  };
}
