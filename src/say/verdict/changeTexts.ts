import { usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import { withDecimal } from '../../../shared/units/format';
import type { Change } from '../../../shared/verdict/wantedChange';
import { say } from '../../../shared/words/reasons';

/** What a change does, as it stands on its button: one, or none. */
export const changeTexts = (
  { mixGPerL, reservoirL, refillEveryDays }: Change,
  display: DisplayUnits = usualDisplay,
): readonly string[] => {
  const text = (value: number) => withDecimal(String(value), display);
  if (mixGPerL !== undefined && reservoirL !== undefined) {
    return [say.change.setMixIn(text(mixGPerL), text(reservoirL), refillEveryDays ?? 1)];
  }
  return [
    ...(mixGPerL === undefined ? [] : [say.change.setMix(text(mixGPerL))]),
    ...(refillEveryDays === undefined ? [] : [say.change.refillEvery(String(refillEveryDays))]),
  ];
};
