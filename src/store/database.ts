import { openDB, type IDBPDatabase } from 'idb';
import { DATABASE } from './databaseName';
import { SCENARIO_VERSION } from '../../shared/scenario/schema';

/** One record a tank, under its id. */
export const TANKS = 'tanks';
/** Up to 0.3.0 there was one bench and no tank: still read, never written. */
export const OLD_BENCH = 'bench';
export const OLD_KEY = 'plans';
/** What could not be read, each as it was found. */
export const ASIDE = 'aside';
/** Up to 0.6.0 there was one place for that. */
const OLD_ASIDE = 'set aside';

/**
 * Goes up with the format of a plan: a window whose page is older than what is kept is refused the
 * database, so that it cannot save over what it cannot read.
 */
const VERSION = SCENARIO_VERSION + 1;

/** Does something with a database that is being opened, and lets go of it. */
export async function using<T>(
  opening: Promise<IDBPDatabase>,
  act: (db: IDBPDatabase) => Promise<T>,
): Promise<T> {
  const db = await opening;
  try {
    return await act(db);
  } finally {
    db.close();
  }
}

/** Does something with the tanks' database. */
export function withDatabase<T>(act: (db: IDBPDatabase) => Promise<T>): Promise<T> {
  const opening = openDB(DATABASE, VERSION, {
    async upgrade(upgraded, from, _to, transaction) {
      if (from < 1) upgraded.createObjectStore(OLD_BENCH);
      if (from < 2) upgraded.createObjectStore(TANKS);
      if (from >= 3) return;
      const aside = upgraded.createObjectStore(ASIDE, { autoIncrement: true });
      const old = transaction.objectStore(OLD_BENCH);
      const spoilt: unknown = await old.get(OLD_ASIDE);
      const records: unknown[] = Array.isArray(spoilt) ? spoilt : spoilt ? [spoilt] : [];
      for (const record of records) {
        await aside.add({ at: '', tank: '', why: [], text: JSON.stringify(record, null, 1) });
      }
      await old.delete(OLD_ASIDE);
    },
  });
  return using(opening, act);
}
