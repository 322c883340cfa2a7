import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import type { LogAnswer } from '../../client/outcome';
import type { LogClient } from '../../client/logClient';
import type { Bench } from '../../state/bench.svelte';
import type { TestLog } from '../../state/testLog.svelte';

/** What a panel of the log works from that asks for a plan or a turn. */
export interface PlanProps {
  readonly bench: Bench;
  readonly log: TestLog;
  /** Those that count. */
  readonly readings: readonly Reading[];
  readonly plan: Scenario;
  readonly answer: LogAnswer | undefined;
  readonly client: LogClient;
  /** Whether the log is being read: a plan from half of it would mislead. */
  readonly reading: boolean;
}

/** What is asked of the worker, for a plan as for a turn. */
export function planAsked({ log, plan, readings, answer }: PlanProps) {
  const { targetDkh, scoopG, pumpMlPerMin } = log.now;
  const known = answer && { now: answer.now, useNow: answer.useNow };
  return [plan, readings, known, { targetDkh, kit: { scoopG, pumpMlPerMin } }] as const;
}
