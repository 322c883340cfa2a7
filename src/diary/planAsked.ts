import type { Reading } from '../../shared/log/reading';
import type { Scenario } from '../../shared/scenario/schema';
import type { LogAnswer, RanUntil } from '../ask/outcome';
import type { Asking } from '../ask/asking';
import type { Beside } from '../bench/beside.svelte';
import type { RealTank } from '../bench/realTank';
import { pairNames } from '../say/plan/ways';
import type { TestLog } from './testLog.svelte';

/** What a panel of the log works from that asks for a plan or a turn. */
export interface PlanProps {
  readonly beside: Beside;
  readonly realTank: RealTank;
  readonly log: TestLog;
  /** Those that count. */
  readonly readings: readonly Reading[];
  readonly plan: Scenario;
  readonly answer: LogAnswer | undefined;
  /** What ran before the plan in force, and until when. */
  readonly ran: readonly RanUntil[];
  readonly client: Asking;
  /** Whether the log is being read: a plan from half of it would mislead. */
  readonly reading: boolean;
}

/** What a plan goes by of an answer to the log; the rest stays on the page. */
export const knownOf = ({ now, useNow, habits, fit }: LogAnswer) => ({
  ...{ now, useNow, habits },
  fit: { now: fit.now, endH: fit.endH },
});

/** What is asked of the worker, for a plan as for a turn. */
export function planAsked({ log, plan, readings, answer }: PlanProps) {
  const { targetDkh, scoopG, pumpMlPerMin, pairUnlinked } = log.now;
  const kit = { scoopG, pumpMlPerMin };
  const wanted = { targetDkh, kit, pairNames, unlinked: pairUnlinked };
  return { plan, log: readings, known: answer && knownOf(answer), wanted };
}
