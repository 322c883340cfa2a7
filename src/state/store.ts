import { openDB, type IDBPDatabase } from 'idb';
import { isScenario } from '../../shared/scenario/parse';
import type { BenchPlans, PlanOnBench } from './plans';
import { inks } from './inks';

const DATABASE = 'paper-reef';
const STORE = 'bench';
const KEY = 'plans';
const SET_ASIDE = 'set aside';

const database = (): Promise<IDBPDatabase> =>
  openDB(DATABASE, 1, { upgrade: (db) => void db.createObjectStore(STORE) });

/** Saves what is on the bench; one record, so that it is there whole or not at all. */
export async function saveBench(bench: BenchPlans): Promise<void> {
  const db = await database();
  await db.put(STORE, bench, KEY);
  db.close();
}

/** Leaves the bench where even a page that is being closed can write. */
export function keepForNextVisit(bench: BenchPlans): void {
  try {
    localStorage.setItem(DATABASE, JSON.stringify(bench));
  } catch {
    // Storage refused or full: the last regular save remains.
  }
}

/** What a closing page left, once. */
function leftBehind(): Partial<BenchPlans> | undefined {
  const text = localStorage.getItem(DATABASE);
  localStorage.removeItem(DATABASE);
  try {
    return text === null ? undefined : (JSON.parse(text) as Partial<BenchPlans>);
  } catch {
    return undefined;
  }
}

const isPlan = (value: unknown): value is PlanOnBench => {
  const plan = value as Partial<PlanOnBench> | undefined;
  return (
    typeof plan?.id === 'string' &&
    typeof plan.name === 'string' &&
    inks[plan.ink ?? -1] !== undefined &&
    isScenario(plan.scenario)
  );
};

export interface Loaded {
  readonly bench: BenchPlans | undefined;
  /** Whether something could not be read; it was put aside, not thrown away. */
  readonly setAside: boolean;
}

/** What was saved last, as far as it can be read. */
export async function loadBench(): Promise<Loaded> {
  const db = await database();
  const saved = leftBehind() ?? ((await db.get(STORE, KEY)) as Partial<BenchPlans> | undefined);
  const all = Array.isArray(saved?.plans) ? saved.plans : [];
  const plans = all.filter(isPlan);
  const setAside = saved !== undefined && (plans.length === 0 || plans.length < all.length);
  if (setAside) await db.put(STORE, saved, SET_ASIDE);
  db.close();
  if (plans.length === 0) return { bench: undefined, setAside };
  const selected = plans.find(({ id }) => id === saved?.selected)?.id ?? plans[0]!.id;
  return { bench: { plans, selected }, setAside };
}
