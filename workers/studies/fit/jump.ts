import type { Shared } from './tried';
import { surest } from './surest';

/** A moment from which the readings fall faster, or more slowly, than before. */
export interface Jump {
  /** Hours since the start of the log. */
  readonly atH: number;
  readonly byDkhPerDay: number;
}

/** A jump of the use that is likelier than rest. */
export function jumpOf(all: readonly Shared[]): Jump | undefined {
  const found = surest(all, ({ kind }) => (kind.jump?.useDkhPerDay ?? 0) > 0);
  return found && { atH: found.kind.jump!.atH, byDkhPerDay: found.found.mean.at(-2)! };
}
