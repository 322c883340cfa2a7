import { say } from '../../../shared/words/plans';
import type { Correction, Offered } from '../../ask/outcome';
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
  const way = correctionSentence(found, now.tank.alkalinityDkh, targetDkh, giveOrTakeDkhPerDay);
  const waits = testFirst(around, way);
  return waits ? [waits.headline, ...waits.more].join(' ') : way;
}
