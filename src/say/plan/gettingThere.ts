import { say } from '../../../shared/words/plans';
import type { Correction, Offered } from '../../ask/outcome';
import { say as words } from '../../../shared/words/turn';
import { isUntold } from '../../ask/isUntold';
import type { Around } from '../turn/known';
import { testFirst } from '../turn/testFirst';
import { correctionSentence } from './correction';

/** How this tank gets there first; without a reading nobody knows whether anything is to be done. */
export function gettingThere(
  found: Correction,
  { now, targetDkh, giveOrTakeDkhPerDay }: Offered['question'],
  around: Around,
): string {
  if (!around.readings.some(({ alkalinityDkh }) => alkalinityDkh !== undefined)) {
    return say.correction.noReading;
  }
  const { answer } = around;
  if (answer && isUntold(answer)) return words.refused.untold;
  const way = correctionSentence(found, now.tank.alkalinityDkh, targetDkh, giveOrTakeDkhPerDay);
  const waits = testFirst(around, way);
  return waits ? [waits.headline, ...waits.more].join(' ') : way;
}
