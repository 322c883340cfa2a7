import { usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import { withDecimal } from '../../../shared/units/format';
import type { Change } from '../../../shared/verdict/wantedChange';
import { say } from '../../../shared/words/reasons';

/** What a change does, as it stands on its button: one, or none. */
export const changeTexts = (
  { mixGPerL, refillEveryDays }: Change,
  display: DisplayUnits = usualDisplay,
): readonly string[] => [
  ...(mixGPerL === undefined ? [] : [say.change.setMix(withDecimal(String(mixGPerL), display))]),
  ...(refillEveryDays === undefined ? [] : [say.change.refillEvery(String(refillEveryDays))]),
];
