import { newestOf } from '../../../shared/log/newest';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import type { LogAnswer, RanUntil } from '../../ask/outcome';
import { isTestDue } from '../../ask/testDue';
import { leapsUnsettled } from '../../ask/leapsUnsettled';
import { isTorn } from '../../ask/testsSooner';
import { turnedAt } from './turnedAt';

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

interface Tank extends Pick<Around, 'readings' | 'answer'> {
  readonly plan: Scenario;
  readonly ran: readonly RanUntil[];
}

/** What is known at a moment of a tank that runs by a plan. */
export const aroundOf = ({ readings, answer, plan, ran }: Tank, now: string): Around => ({
  ...{ readings, answer, now },
  turnedAt: turnedAt(ran, plan, newestOf(readings, 'alkalinityDkh')?.at),
});

/** What has to be known before something is turned by a log; undefined where all is. */
export function waitsFor({
  answer,
  turnedAt,
  now,
}: Around): 'use' | 'test' | 'turned' | 'level' | 'leapt' | undefined {
  if (!answer) return 'use';
  if (isTestDue(answer, now)) return 'test';
  if (turnedAt !== undefined) return 'turned';
  if (isTorn(answer)) return 'level';
  return leapsUnsettled(answer) ? 'leapt' : undefined;
}
