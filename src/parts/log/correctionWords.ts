import type { Reading } from '../../../shared/log/reading';
import { wordFor } from '../../../shared/scenario/words';
import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import type { Correction, Offered } from '../../client/outcome';

const told = say.correction;

/** How this tank gets there first; without a reading nobody knows whether anything is to be done. */
export const gettingThere = (
  found: Correction,
  { now, targetDkh }: Offered['question'],
  readings: readonly Reading[],
): string =>
  readings.some(({ alkalinityDkh }) => alkalinityDkh !== undefined)
    ? correctionSentence(found, now.tank.alkalinityDkh, targetDkh)
    : told.noReading;

/** How the water gets from what it is to the target, in a sentence or two. */
export function correctionSentence(found: Correction, nowDkh: number, targetDkh: number): string {
  const way = [figure(nowDkh, 1), figure(targetDkh, 1)] as const;
  switch (found.kind) {
    case 'none':
      return told.none(way[0]);
    case 'tooFast':
      return told.tooFast(...way, figure(found.mostDkhPerDay));
    case 'rises':
      return told.rises(...way, found.days, figure(found.largestDailyDkh, 2));
    case 'raise': {
      const dose = told.grams(figure(found.gramsPerDay), wordFor(found.additive));
      const effect = told.raised(figure(found.largestDailyDkh, 2), figure(found.peakPh, 2));
      return `${told.raise(...way, dose, found.days)} ${effect}`;
    }
    case 'wait': {
      const meanwhile =
        found.shareOfDose > 0
          ? told.goOn(Math.round(found.shareOfDose * 100), dosingOf(found.scenario))
          : told.doseNothing;
      return found.days === undefined
        ? told.tooSlow(...way, meanwhile)
        : told.wait(...way, figure(found.days, 1), meanwhile, figure(found.largestDailyDkh, 2));
    }
  }
}

/** What goes on meanwhile, as a keeper mixes and sets it. */
function dosingOf({ topOff, dosers }: Scenario): string {
  const { dosing } = say;
  const additive = topOff.gramsPerL > 0 ? topOff.additive : 'none';
  return [
    ...(additive === 'none' ? [] : [dosing.topOff(figure(topOff.gramsPerL, 2), wordFor(additive))]),
    ...dosers.map(({ mlPerDay, name }) => dosing.doser(figure(mlPerDay, 1), name)),
  ].join(', ');
}
