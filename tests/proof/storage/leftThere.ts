import type { Page } from '@playwright/test';

/** What was left in a browser before the page is opened: by another version, or by a spoilt disk. */
export interface LeftThere {
  readonly version: number;
  /** Records by store and key. */
  readonly stores: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly beside?: Readonly<Record<string, string>>;
}

/** What JSON cannot say, and a database can hold. */
const written = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? `%${value}%` : value;

/** Puts it there, past the page's own code, from any page of its origin. */
export const leave = (page: Page, { version, stores, beside }: LeftThere): Promise<void> =>
  page.evaluate(
    async ([version, text, beside]) => {
      const unwritten = (_: string, value: unknown) =>
        value === '%NaN%' ? NaN : value === '%Infinity%' ? Infinity : value;
      const stores = JSON.parse(text, unwritten) as LeftThere['stores'];
      const done = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      localStorage.clear();
      await done(indexedDB.deleteDatabase('paper-reef'));
      const opening = indexedDB.open('paper-reef', version);
      opening.onupgradeneeded = () => {
        for (const name of Object.keys(stores)) {
          opening.result.createObjectStore(name, name === 'aside' ? { autoIncrement: true } : {});
        }
      };
      const db = await done(opening);
      for (const [name, records] of Object.entries(stores)) {
        for (const [key, record] of Object.entries(records)) {
          await done(db.transaction(name, 'readwrite').objectStore(name).put(record, key));
        }
      }
      db.close();
      for (const [key, text] of Object.entries(beside ?? {})) localStorage.setItem(key, text);
    },
    [version, JSON.stringify(stores, written), beside] as const,
  );
