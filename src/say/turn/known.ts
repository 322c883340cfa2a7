import type { Reading } from '../../../shared/log/reading';
import type { LogAnswer } from '../../ask/outcome';

/** What is known beside the turn itself. */
export interface Around {
  readonly readings: readonly Reading[];
  /** What was fitted to them; undefined where they say nothing yet. */
  readonly answer: Pick<LogAnswer, 'fit' | 'habits'> | undefined;
}

/** A level that is known no better is none to turn anything by, dKH at two standard errors. */
const TORN_DKH = 0.6;

export const levelBy = ({ fit }: Pick<LogAnswer, 'fit'>) =>
  2 * Math.sqrt(fit.now.covariance[0]![0]!);

/** Whether use and level are known well enough to turn something by them. */
export const isKnown = (answer: Around['answer']): boolean =>
  answer !== undefined && levelBy(answer) <= TORN_DKH;
