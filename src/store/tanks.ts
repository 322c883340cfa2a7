import { emptyLog, type TankLog } from '../../shared/log/tankLog';
import type { BenchPlans } from './plans';

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

/** The edition of a save is this browser's own business. */
export const withoutEdition = ({ id, name, bench, log }: Tank): Tank => ({ id, name, bench, log });

let latest = 0;

/** A name that no other window chooses at the same moment; kept in the order in which tanks came. */
export function freshTankId(): string {
  latest = Math.max(latest + 1, Date.now());
  return `tank-${latest.toString(36)}-${crypto.randomUUID()}`;
}
