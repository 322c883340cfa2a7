import { lineTexts } from '../say/lineTexts';
import { say } from '../../shared/words/tanks';
import type { Glance } from './glance';

/** How a tank stands, in the few words of its stamp. */
export function stampText(glance: Glance): string {
  const { stamps } = say;
  const { isOut, outside, answer, leavesInDays, isTestDue } = glance;
  if (isOut) return stamps.outside;
  if (outside.length > 0) {
    return stamps.otherOutside(outside.map(({ band: { id } }) => lineTexts[id].name).join(', '));
  }
  if (answer === undefined) return stamps.working;
  if (leavesInDays !== undefined) {
    if (leavesInDays < 0) return stamps.mayHaveLeft;
    return leavesInDays === 0 ? stamps.leavesToday : stamps.leaves(leavesInDays);
  }
  if (isTestDue) return stamps.due;
  return typeof answer === 'object' ? stamps.stays : stamps.unknown;
}
