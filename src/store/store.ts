import { say } from '../../shared/words/saving';
import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { putAside } from './aside';
import { ASIDE, OLD_BENCH, OLD_KEY, TANKS, withDatabase } from './database';
import { rescue } from './leaving';
import { said } from './said';
import { mergeTanks } from './mergeTanks';
import type { BenchPlans } from './plans';
import { readTank } from './readTank';
import { same } from './same';
import { newTank, type Tank } from './tanks';

// A first picture needs no merging: it is fetched with this.
export { mergeTanks, rebased } from './mergeTanks';

type Writing = IDBPTransaction<unknown, string[], 'readwrite'>;

export interface Saved {
  readonly tank: Tank;
  /** Another window's plans of this tank, kept as a tank of their own. */
  readonly aside: Tank | undefined;
  /** Whether what was saved before could not be read whole; it was put aside. */
  readonly setAside: boolean;
}

/**
 * Saves a tank; one record, so that it is there whole or not at all. What another window has saved
 * since `base` was read is merged, and what cannot be read is put aside, within the one transaction.
 */
export const saveTank = (tank: Tank, base: Tank | undefined): Promise<Saved> =>
  withDatabase(async (db) => {
    const transaction = db.transaction([TANKS, ASIDE], 'readwrite');
    const saved = await saveIn(transaction, tank, base);
    await transaction.done;
    return saved;
  });

async function saveIn(transaction: Writing, tank: Tank, base: Tank | undefined): Promise<Saved> {
  const store = transaction.objectStore(TANKS);
  const record: unknown = await store.get(tank.id);
  const edition = (base ?? tank).edition;
  const isOurs =
    record === undefined || (edition !== undefined && (record as Tank).edition === edition);
  const { tank: stored, problems } = isOurs
    ? { tank: undefined, problems: [] }
    : readTank(record, tank.id);
  const setAside =
    problems.length > 0 &&
    (await putAside(transaction.objectStore(ASIDE), record, tank.name, problems));
  const merged = stored
    ? mergeTanks(base ?? beginning(tank, stored), tank, stored)
    : { tank, aside: undefined };
  const saved: Tank = { ...merged.tank, edition: crypto.randomUUID() };
  await store.put(saved, saved.id);
  const aside: Tank | undefined = merged.aside && {
    ...newTank(
      `${tank.id}-${saved.edition!.slice(0, 8)}`,
      say.otherWindowTank(tank.name),
      merged.aside,
    ),
    edition: saved.edition!,
  };
  if (aside) await store.put(aside, aside.id);
  return { tank: saved, aside, setAside };
}

/** What two tanks of unknown beginnings may have begun as: neither misses a reading, no plan is lost. */
function beginning(mine: Tank, theirs: Tank): Tank {
  const ours = new Set(mine.log.readings.map(said));
  const readings = theirs.log.readings.filter((one) => ours.has(said(one)));
  const bench: BenchPlans = { plans: [], selected: '', since: '', before: [] };
  const checks = theirs.log.checks.filter((one) => mine.log.checks.some((own) => same(own, one)));
  return { ...theirs, bench, log: { ...theirs.log, readings, checks } };
}

/** A tank as it is saved now. */
export const readSaved = (id: string): Promise<Tank | 'gone' | undefined> =>
  withDatabase(async (db) => {
    const record: unknown = await db.get(TANKS, id);
    return record === undefined ? 'gone' : readTank(record, id).tank;
  });

/**
 * Removes a tank as this window knows it; says whether another window had saved since, so that more
 * was in it than was seen here: it is put aside then.
 */
export const removeTank = (id: string, known: Tank | undefined): Promise<boolean> =>
  withDatabase(async (db) => {
    const transaction = db.transaction([TANKS, ASIDE], 'readwrite');
    const store = transaction.objectStore(TANKS);
    const record = (await store.get(id)) as Tank | undefined;
    const isMore = record !== undefined && record.edition !== known?.edition;
    if (isMore) {
      const why = [say.removedElsewhere(record.name)];
      await putAside(transaction.objectStore(ASIDE), record, record.name, why);
    }
    await store.delete(id);
    await transaction.done;
    return isMore;
  });

export interface Loaded {
  readonly tanks: readonly Tank[];
  /** Whether something could not be read; it was put aside, not thrown away. */
  readonly setAside: boolean;
}

/** Every record there is, under the id of its tank; without a lock: other windows go on meanwhile. */
async function recordsOf(db: IDBPDatabase): Promise<Map<string, unknown>> {
  const transaction = db.transaction([TANKS, OLD_BENCH]);
  const store = transaction.objectStore(TANKS);
  const [keys, all] = await Promise.all([store.getAllKeys(), store.getAll() as Promise<unknown[]>]);
  if (keys.length > 0) return new Map(keys.map((key, i) => [String(key), all[i]]));
  const bench: unknown = await transaction.objectStore(OLD_BENCH).get(OLD_KEY);
  return new Map(bench === undefined ? [] : [['tank-1', bench]]);
}

/** What was saved last and what closed pages left, as far as it can be read. */
export const loadTanks = (): Promise<Loaded> =>
  withDatabase(async (db) => {
    let setAside = false;
    const tanks = new Map<string, Tank>();
    for (const [id, record] of await recordsOf(db)) {
      const { tank, problems } = readTank(record, id);
      if (tank) tanks.set(tank.id, tank);
      if (problems.length === 0) continue;
      const transaction = db.transaction([TANKS, ASIDE], 'readwrite');
      const aside = transaction.objectStore(ASIDE);
      setAside = (await putAside(aside, record, tank?.name ?? id, problems)) || setAside;
      const store = transaction.objectStore(TANKS);
      // Another window may have put it right since.
      const now: unknown = (await store.get(id)) ?? record;
      if (same(now, record)) await (tank ? store.put(tank, id) : store.delete(id));
      await transaction.done;
    }
    await rescue(async ({ tank: left, base }, text) => {
      const { tank, problems } = readTank(left);
      const saving = db.transaction([TANKS, ASIDE], 'readwrite');
      if (problems.length > 0) {
        setAside =
          (await putAside(saving.objectStore(ASIDE), text, tank?.name ?? '', problems)) || setAside;
      }
      if (tank) {
        const saved = await saveIn(saving, tank, readTank(base, tank.id).tank);
        tanks.set(saved.tank.id, saved.tank);
        if (saved.aside) tanks.set(saved.aside.id, saved.aside);
      }
      await saving.done;
    });
    return { tanks: [...tanks.values()], setAside };
  });
