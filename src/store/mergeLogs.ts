import { oldestFirst, type Check } from '../../shared/log/check';
import { inOrder } from '../../shared/log/reading';
import type { TankLog } from '../../shared/log/tankLog';
import { said } from './said';
import { same } from './same';
import { threeWay } from './threeWay';

/** The same of what was tested; of one thing that both have tested, the newer counts. */
function mergeChecks(base: readonly Check[], mine: readonly Check[], theirs: readonly Check[]) {
  const has = (list: readonly Check[], one: Check) => list.some((other) => same(other, one));
  const kept = base.filter((one) => has(mine, one) && has(theirs, one));
  const added = [...mine, ...theirs].filter((one) => !has(base, one));
  return oldestFirst([...kept, ...added]);
}

/** How the log is read and what is left of what is used up, each by its name. */
const settingsOf = (log: TankLog) => ({
  settings: { ...log, readings: [], checks: [], supplies: [] },
  supplies: Object.fromEntries(log.supplies.map((supply) => [supply.id, supply])),
});

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
  const merged = threeWay(settingsOf(base), settingsOf(mine), settingsOf(theirs));
  const { settings, supplies } = merged.value as ReturnType<typeof settingsOf>;
  return {
    ...settings,
    supplies: Object.values(supplies),
    readings: inOrder([...kept, ...added.values()]),
    checks: mergeChecks(base.checks, mine.checks, theirs.checks),
  };
}
