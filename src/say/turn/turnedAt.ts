import { dosesAlike } from '../../../shared/scenario/dosesAlike';
import type { Scenario } from '../../../shared/scenario/schema';
import type { RanUntil } from '../../ask/outcome';

/** When what runs was turned after a reading, as a local time; undefined where it doses what it did then. */
export function turnedAt(
  ran: readonly RanUntil[],
  plan: Scenario,
  readAt: string | undefined,
): string | undefined {
  if (readAt === undefined) return undefined;
  // Within one minute the test comes first.
  const since = ran.filter(({ until }) => until >= readAt);
  const [then] = since;
  return then && !dosesAlike(then.plan, plan) ? since.at(-1)!.until : undefined;
}
