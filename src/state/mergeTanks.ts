import { inOrder, sameReading, type Reading } from '../../shared/log/reading';
import type { TankLog } from '../../shared/log/tankLog';
import type { BenchPlans } from './plans';
import type { Tank } from './tanks';

const same = (a: unknown, b: unknown): boolean =>
  a === b || JSON.stringify(a) === JSON.stringify(b);

const has = (readings: readonly Reading[], one: Reading) =>
  readings.some((other) => sameReading(other, one));

/** What both have, and what either has added; gone is what one of the two took out. */
function mergeLogs(base: TankLog, mine: TankLog, theirs: TankLog): TankLog {
  const kept = base.readings.filter(
    (reading) => has(mine.readings, reading) && has(theirs.readings, reading),
  );
  const added = [...mine.readings, ...theirs.readings].filter(
    (reading, i, all) =>
      !has(base.readings, reading) && all.findIndex((other) => sameReading(other, reading)) === i,
  );
  const settings = same({ ...mine, readings: [] }, { ...base, readings: [] }) ? theirs : mine;
  return { ...settings, readings: inOrder([...kept, ...added]) };
}

export interface Merged {
  readonly tank: Tank;
  /** Plans of the other window that cannot stand beside ours: kept as they were. */
  readonly aside: BenchPlans | undefined;
}

/**
 * One tank out of two that began alike: a part that only one window has changed is that window's;
 * of a bench that both have changed, ours stays and theirs is put aside.
 */
export function mergeTanks(base: Tank, mine: Tank, theirs: Tank): Merged {
  const pick = <Part extends 'name' | 'bench'>(part: Part): Tank[Part] =>
    same(mine[part], base[part]) ? theirs[part] : mine[part];
  const bothChanged =
    !same(mine.bench.plans, base.bench.plans) &&
    !same(theirs.bench.plans, base.bench.plans) &&
    !same(mine.bench.plans, theirs.bench.plans);
  return {
    tank: {
      ...{ id: mine.id, name: pick('name'), bench: pick('bench') },
      log: mergeLogs(base.log, mine.log, theirs.log),
    },
    aside: bothChanged ? theirs.bench : undefined,
  };
}
