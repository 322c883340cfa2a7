import type { RanUntil } from '../ask/outcome';
import type { BenchPlans } from '../store/plans';

/**
 * What the tank ran by until each turn. Another act may have put right what was typed wrongly, so that
 * the log is read against it from its start; a turn is a change on that day.
 */
export const ranUntil = ({ before, since }: BenchPlans): RanUntil[] =>
  before.flatMap(({ scenario: plan, turned }, i) => {
    const until = before[i + 1]?.since ?? since;
    return turned && until !== '' ? [{ until, plan }] : [];
  });
