import type { Page } from '@playwright/test';
import type { Aside } from '../../../src/store/aside';
import type { Tank } from '../../../src/store/tanks';

/** All that a browser keeps for the page, as it stands there. */
export interface KeptThere {
  readonly version: number;
  readonly tanks: Readonly<Record<string, Tank>>;
  readonly aside: readonly Aside[];
  readonly beside: Readonly<Record<string, string>>;
}

/** Read past the page's own code, from any page of its origin. */
export const keptThere = (page: Page): Promise<KeptThere> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await done(indexedDB.open('paper-reef'));
    const names = [...db.objectStoreNames];
    const all = async (name: string): Promise<[string, unknown][]> => {
      if (!names.includes(name)) return [];
      const store = db.transaction(name).objectStore(name);
      const [keys, values] = [await done(store.getAllKeys()), await done(store.getAll())];
      return keys.map((key, i) => [String(key), values[i]]);
    };
    const tanks = Object.fromEntries(await all('tanks')) as never;
    const aside = (await all('aside')).map(([, value]) => value) as never;
    db.close();
    return { version: db.version, tanks, aside, beside: { ...localStorage } };
  });
