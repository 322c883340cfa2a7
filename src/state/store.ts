import { openDB, type IDBPDatabase } from 'idb';
import { parseScenario } from '../../shared/scenario/parse';
import type { BenchPlans, PlanOnBench } from './plans';
import { inks } from './inks';

const DATABASE = 'paper-reef';
const STORE = 'bench';
const KEY = 'plans';

const database = (): Promise<IDBPDatabase> =>
  openDB(DATABASE, 1, { upgrade: (db) => void db.createObjectStore(STORE) });

/** Saves what is on the bench; one record, so that it is there whole or not at all. */
export async function saveBench(bench: BenchPlans): Promise<void> {
  const db = await database();
  await db.put(STORE, bench, KEY);
  db.close();
}

const isPlan = (value: unknown): value is PlanOnBench => {
  const plan = value as Partial<PlanOnBench> | undefined;
  return (
    typeof plan?.id === 'string' &&
    typeof plan.name === 'string' &&
    inks[plan.ink ?? -1] !== undefined &&
    parseScenario(plan.scenario).ok
  );
};

/** What was saved last, or undefined when nothing (or nothing readable) is there. */
export async function loadBench(): Promise<BenchPlans | undefined> {
  const db = await database();
  const saved = (await db.get(STORE, KEY)) as Partial<BenchPlans> | undefined;
  db.close();
  const plans = saved?.plans?.filter(isPlan) ?? [];
  if (plans.length === 0) return undefined;
  const selected = plans.find(({ id }) => id === saved?.selected)?.id ?? plans[0]!.id;
  return { plans, selected };
}
