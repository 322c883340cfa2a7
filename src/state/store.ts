import { openDB, type IDBPDatabase } from 'idb';
import { readTank, tankOfBench, type Tank } from './tanks';

const DATABASE = 'paper-reef';
/** One record a tank, under its id. */
const TANKS = 'tanks';
/** Up to version 1 there was one bench and no tank: still read, never written. */
const OLD_BENCH = 'bench';
const OLD_KEY = 'plans';
const SET_ASIDE = 'set aside';
const CURRENT = 'paper-reef current tank';

const database = (): Promise<IDBPDatabase> =>
  openDB(DATABASE, 2, {
    upgrade(db, from) {
      if (from < 1) db.createObjectStore(OLD_BENCH);
      db.createObjectStore(TANKS);
    },
  });

/** Saves a tank; one record, so that it is there whole or not at all. */
export async function saveTank(tank: Tank): Promise<void> {
  const db = await database();
  await db.put(TANKS, tank, tank.id);
  db.close();
}

export async function removeTank(id: string): Promise<void> {
  const db = await database();
  await db.delete(TANKS, id);
  db.close();
}

/** Leaves a tank where even a page that is being closed can write. */
export function keepForNextVisit(tank: Tank): void {
  try {
    localStorage.setItem(DATABASE, JSON.stringify(tank));
  } catch {
    // Storage refused or full: the last regular save remains.
  }
}

/** What a closing page left, once. */
function leftBehind(): unknown {
  const text = localStorage.getItem(DATABASE);
  localStorage.removeItem(DATABASE);
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Which tank was open last. */
export const lastOpen = (): string | null => localStorage.getItem(CURRENT);

export function keepOpen(id: string): void {
  try {
    localStorage.setItem(CURRENT, id);
  } catch {
    // Storage refused: the first tank opens next time.
  }
}

export interface Loaded {
  readonly tanks: readonly Tank[];
  /** Whether something could not be read; it was put aside, not thrown away. */
  readonly setAside: boolean;
}

/** What was saved last, as far as it can be read. */
export async function loadTanks(): Promise<Loaded> {
  const db = await database();
  const saved = new Map<string, unknown>();
  for (const key of await db.getAllKeys(TANKS)) saved.set(String(key), await db.get(TANKS, key));
  const left = leftBehind();
  if (left !== undefined) saved.set(String((left as Partial<Tank>).id ?? 'tank-1'), left);
  if (saved.size === 0) {
    const bench: unknown = await db.get(OLD_BENCH, OLD_KEY);
    if (bench !== undefined) saved.set('tank-1', bench);
  }
  const read = [...saved].map(([id, value]) => readTank(tankOfBench(id, value)));
  const spoiled = read.some(({ whole }) => !whole);
  if (spoiled) await db.put(OLD_BENCH, [...saved.values()], SET_ASIDE);
  db.close();
  return { tanks: read.flatMap(({ tank }) => tank ?? []), setAside: spoiled };
}
