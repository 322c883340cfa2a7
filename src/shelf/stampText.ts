import { lineTexts } from '../say/lineTexts';
import { say } from '../../shared/words/tanks';
import type { Glance } from './glance';

/** How a tank stands, in the few words of its stamp. */
export function stampText(glance: Glance): string {
  const { stamps } = say;
  const { isOut, isToxic, outside, answer, leavesInDays, isTestDue } = glance;
  // Ammonia harms sooner than any alkalinity.
  if (isOut && !isToxic) return stamps.outside;
  const read = outside.map(({ band: { id } }) => id);
  const ids = isToxic ? (['ammonia', ...read] as const) : read;
  if (ids.length > 0) {
    return stamps.otherOutside(ids.map((id) => lineTexts[id].name).join(', '));
  }
  if (answer === undefined) return stamps.working;
  if (leavesInDays !== undefined) {
    if (leavesInDays < 0) return stamps.mayHaveLeft;
    return leavesInDays === 0 ? stamps.leavesToday : stamps.leaves(leavesInDays);
  }
  if (isTestDue) return stamps.due;
  return typeof answer === 'object' ? stamps.stays : stamps.unknown;
}
