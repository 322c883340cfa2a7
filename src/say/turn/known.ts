import type { Reading } from '../../../shared/log/reading';
import type { LogAnswer } from '../../ask/outcome';
import { isTestDue } from '../../ask/testDue';
import { isTorn } from '../../ask/testsSooner';

/** What is known beside the turn itself. */
export interface Around {
  readonly readings: readonly Reading[];
  /** What was fitted to them; undefined where they say nothing yet. */
  readonly answer:
    Pick<LogAnswer, 'fit' | 'fan' | 'useNow' | 'habits' | 'nextTest' | 'now'> | undefined;
  /** When what runs was turned after the newest test, as a local time; undefined where it was not. */
  readonly turnedAt?: string | undefined;
  /** Local time. */
  readonly now: string;
}

/** What has to be known before something is turned by a log; undefined where all is. */
export function waitsFor({
  answer,
  turnedAt,
  now,
}: Around): 'use' | 'test' | 'turned' | 'level' | undefined {
  if (!answer) return 'use';
  if (isTestDue(answer, now)) return 'test';
  if (turnedAt !== undefined) return 'turned';
  return isTorn(answer) ? 'level' : undefined;
}
