import { additives, bringsAlkalinity } from '../../../shared/species/additives';
import { say } from '../../../shared/words/plans';
import type { Correction, Offer, Offered } from '../../ask/outcome';
import { say as words } from '../../../shared/words/turn';
import { isUntold } from '../../ask/isUntold';
import type { Around } from '../turn/known';
import { testFirst } from '../turn/testFirst';
import { unreadOf } from '../turn/unread';
import { habitDoses } from '../fit/answer';
import { correctionSentence } from './correction';

/** What a plan is refused for, or goes outside with. */
const outsideOf = ({ refusal, verdict }: Pick<Offer, 'refusal' | 'verdict'>): string[] =>
  [...verdict.broken, ...(refusal?.kind === 'breach' ? [refusal.breach] : [])].map(
    ({ quantity }) => quantity,
  );

/** Plans are reckoned without what is poured in by hand, and bring both parts of what it brings. */
function stopsByHand({ answer }: Around): string[] {
  const doses = (answer?.habits.doses ?? []).filter(
    ({ additive }) => bringsAlkalinity(additive) || 'Ca' in additives[additive].gives,
  );
  return doses.length === 0 ? [] : [say.correction.handStops(habitDoses(doses))];
}

/** How this tank gets there first; without a reading nobody knows whether anything is to be done. */
export function gettingThere(
  found: Correction,
  { now, targetDkh, giveOrTakeDkhPerDay }: Offered['question'],
  around: Around,
  offer: Pick<Offer, 'refusal' | 'verdict'> | undefined,
): string {
  if (!around.readings.some(({ alkalinityDkh }) => alkalinityDkh !== undefined)) {
    return say.correction.noReading;
  }
  const { answer } = around;
  if (answer && isUntold(answer)) return words.refused.untold;
  const way = correctionSentence(found, now.tank.alkalinityDkh, targetDkh, giveOrTakeDkhPerDay);
  const unread = offer ? unreadOf(outsideOf(offer), around) : [];
  const told = [way, ...stopsByHand(around), ...unread].join(' ');
  const waits = testFirst(around, told);
  return waits ? [waits.headline, ...waits.more].join(' ') : told;
}
