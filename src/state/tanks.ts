import { isScenario } from '../../shared/scenario/parse';
import { emptyLog, readTankLog, type TankLog } from '../../shared/log/tankLog';
import type { BenchPlans, PlanOnBench } from './plans';
import { inks } from './inks';

/** A tank as it is kept: its plans on the bench, and its test log. */
export interface Tank {
  readonly id: string;
  readonly name: string;
  readonly bench: BenchPlans;
  readonly log: TankLog;
  /** Names the save it comes from: another window may have saved since. */
  readonly edition?: string;
}

export const newTank = (id: string, name: string, bench: BenchPlans): Tank => ({
  ...{ id, name, bench },
  log: emptyLog,
});

export function freeTankId(tanks: readonly Tank[]): string {
  let n = tanks.length + 1;
  while (tanks.some(({ id }) => id === `tank-${n}`)) n++;
  return `tank-${n}`;
}

/** A saved tank; what was saved before there were tanks is the bench of the first. */
export function tankOfBench(id: string, saved: unknown): unknown {
  const isBench = Array.isArray((saved as Partial<BenchPlans> | undefined)?.plans);
  return isBench ? { id, name: '', bench: saved, log: emptyLog } : saved;
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

interface ReadTank {
  readonly tank: Tank | undefined;
  /** False when some of it could not be read. */
  readonly whole: boolean;
}

/** A tank as far as it can be read; one without a single plan is none. */
export function readTank(saved: unknown): ReadTank {
  const raw = saved as Partial<Tank> | undefined;
  const all: unknown[] = Array.isArray(raw?.bench?.plans) ? [...raw.bench.plans] : [];
  const plans = all.filter(isPlan);
  const { log, unreadable } = readTankLog(raw?.log);
  const whole = plans.length > 0 && plans.length === all.length && unreadable === 0;
  if (plans.length === 0 || typeof raw?.id !== 'string') return { tank: undefined, whole: false };
  const selected = plans.find(({ id }) => id === raw.bench?.selected)?.id ?? plans[0]!.id;
  const name =
    typeof raw.name === 'string' && raw.name !== '' ? raw.name : plans[0]!.scenario.title;
  const edition = typeof raw.edition === 'string' ? { edition: raw.edition } : {};
  return { tank: { id: raw.id, name, bench: { plans, selected }, log, ...edition }, whole };
}
