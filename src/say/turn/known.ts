import type { Reading } from '../../../shared/log/reading';
import type { LogAnswer } from '../../ask/outcome';
import { isTestDue } from '../../ask/testDue';

/** What is known beside the turn itself. */
export interface Around {
  readonly readings: readonly Reading[];
  /** What was fitted to them; undefined where they say nothing yet. */
  readonly answer: Pick<LogAnswer, 'fit' | 'habits' | 'nextTest'> | undefined;
  /** Local time. */
  readonly now: string;
}

/** A level that is known no better is none to turn anything by, dKH at two standard errors. */
const TORN_DKH = 0.6;

export const levelBy = ({ fit }: Pick<LogAnswer, 'fit'>) =>
  2 * Math.sqrt(fit.now.covariance[0]![0]!);

/** What has to be known before something is turned by a log; undefined where all is. */
export function waitsFor({
  answer,
  now,
}: Pick<Around, 'answer' | 'now'>): 'use' | 'test' | 'level' | undefined {
  if (!answer) return 'use';
  if (isTestDue(answer, now)) return 'test';
  return levelBy(answer) > TORN_DKH ? 'level' : undefined;
}
