import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';

/** What a browser keeps beside its database; full when told so. */
class Storage {
  private readonly held = new Map<string, string>();
  get length(): number {
    return this.held.size;
  }
  key(i: number): string | null {
    return [...this.held.keys()][i] ?? null;
  }
  getItem(key: string): string | null {
    return this.held.get(key) ?? null;
  }
  setItem(key: string, text: string): void {
    this.held.set(key, text);
  }
  removeItem(key: string): void {
    this.held.delete(key);
  }
}

/** A browser in which nobody has opened the page yet. */
export function freshBrowser(): void {
  globalThis.indexedDB = new IDBFactory();
  Object.assign(globalThis, { localStorage: new Storage() });
}

const done = <T>(request: IDBRequest<T>) =>
  new Promise<T>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** The database as a page of another version opens it. */
export async function openAs(version: number): Promise<IDBDatabase> {
  const opening = indexedDB.open('paper-reef', version);
  opening.onupgradeneeded = ({ oldVersion }) => {
    if (oldVersion < 1) opening.result.createObjectStore('bench');
    if (oldVersion < 2 && version > 1) opening.result.createObjectStore('tanks');
  };
  return done(opening);
}

/** Records as another version, or a spoilt disk, has left them. */
export async function put(
  version: number,
  store: string,
  records: Readonly<Record<string, unknown>>,
): Promise<void> {
  const db = await openAs(version);
  const transaction = db.transaction(store, 'readwrite');
  for (const [key, record] of Object.entries(records)) {
    await done(transaction.objectStore(store).put(record, key));
  }
  db.close();
}
