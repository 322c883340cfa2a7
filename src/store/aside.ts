import type { IDBPObjectStore } from 'idb';
import { ASIDE, withDatabase } from './database';
import { nowLocal } from './nowLocal';

/** A record that could not be read whole, as it was found. */
export interface Aside {
  /** When it was put aside; empty: by a version that did not note it. */
  readonly at: string;
  readonly tank: string;
  /** What could not be read, a sentence each. */
  readonly why: readonly string[];
  readonly text: string;
}

type AsideStore = IDBPObjectStore<unknown, string[], typeof ASIDE, 'readwrite'>;

/** Puts a record aside, once however often it is met; says whether it is new there. */
export async function putAside(
  store: AsideStore,
  record: unknown,
  tank: string,
  why: readonly string[],
): Promise<boolean> {
  const text = typeof record === 'string' ? record : JSON.stringify(record, null, 1);
  const all: Aside[] = await store.getAll();
  if (all.some((one) => one.text === text)) return false;
  await store.add({ at: nowLocal(), tank, why, text } satisfies Aside);
  return true;
}

/** Everything that was put aside, by its key, the latest first. */
export const asideRecords = (): Promise<(readonly [key: number, record: Aside])[]> =>
  withDatabase(async (db) => {
    const store = db.transaction(ASIDE).store;
    const [keys, records] = [await store.getAllKeys(), (await store.getAll()) as Aside[]];
    return keys.map((key, i) => [Number(key), records[i]!] as const).reverse();
  });

export const forgetAside = (key: number): Promise<void> =>
  withDatabase((db) => db.delete(ASIDE, key));
