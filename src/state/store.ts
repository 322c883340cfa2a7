import { say } from '../../shared/words/shelf';
import { openDB, type IDBPDatabase } from 'idb';
import { sameReading } from '../../shared/log/reading';
import { mergeTanks } from './mergeTanks';
import { newTank, readTank, tankOfBench, type Tank } from './tanks';

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

export interface Saved {
  readonly tank: Tank;
  /** Another window's plans of this tank, kept as a tank of their own. */
  readonly aside: Tank | undefined;
}

/**
 * Saves a tank; one record, so that it is there whole or not at all. What another window has saved
 * since `base` was read is merged, within the one transaction.
 */
export async function saveTank(tank: Tank, base: Tank | undefined): Promise<Saved> {
  const db = await database();
  const { store, done } = db.transaction(TANKS, 'readwrite');
  const { tank: stored } = readTank(await store.get(tank.id));
  const foreign = stored && base && stored.edition !== base.edition ? stored : undefined;
  const merged = foreign ? mergeTanks(base!, tank, foreign) : { tank, aside: undefined };
  const saved: Tank = { ...merged.tank, edition: crypto.randomUUID() };
  await store.put(saved, saved.id);
  const aside: Tank | undefined = merged.aside && {
    ...newTank(
      `${tank.id}-${saved.edition!.slice(0, 8)}`,
      say.saving.otherWindowTank(tank.name),
      merged.aside,
    ),
    edition: saved.edition!,
  };
  if (aside) await store.put(aside, aside.id);
  await done;
  db.close();
  return { tank: saved, aside };
}

/** A tank as it is saved now. */
export async function readSaved(id: string): Promise<Tank | undefined> {
  const db = await database();
  const { tank } = readTank(await db.get(TANKS, id));
  db.close();
  return tank;
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

/** What a closing page left, put together with what another window has saved since. */
function withLeft(left: unknown, stored: unknown): unknown {
  const [mine, theirs] = [readTank(left).tank, readTank(stored).tank];
  if (!mine || !theirs || mine.edition === theirs.edition) return left;
  const common = theirs.log.readings.filter((one) =>
    mine.log.readings.some((other) => sameReading(one, other)),
  );
  const base = { ...theirs, log: { ...theirs.log, readings: common } };
  return mergeTanks(base, mine, theirs).tank;
}

/** Which tank was open last. */
export function lastOpen(): string | null {
  try {
    return localStorage.getItem(CURRENT);
  } catch {
    // Storage refused: nothing is remembered.
    return null;
  }
}

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
  if (left !== undefined) {
    const id = String((left as Partial<Tank>).id ?? 'tank-1');
    saved.set(id, withLeft(left, saved.get(id)));
  }
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
