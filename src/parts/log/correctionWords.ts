import { additives } from '../../../shared/species/additives';
import type { Correction } from '../../client/outcome';

const daysText = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

/** How the water gets from what it is to the target, in a sentence or two. */
export function correctionSentence(found: Correction, nowDkh: number, targetDkh: number): string {
  const way = `from ${nowDkh.toFixed(1)} to ${targetDkh.toFixed(1)} dKH`;
  switch (found.kind) {
    case 'none':
      return `The water stands at ${nowDkh.toFixed(1)} dKH, where it should be: no correction.`;
    case 'tooFast':
      return `No daily dose gets ${way} without moving more than your ${found.mostDkhPerDay} dKH a day: begin the plan’s dosing first, and correct when the fall has stopped.`;
    case 'raise':
      return `First ${way}: ${found.gramsPerDay} g of ${additives[found.additive].label} a day for ${daysText(found.days)}, dissolved in fresh water and poured in slowly each morning. Alkalinity then moves by at most ${found.largestDailyDkh.toFixed(2)} dKH in a day; pH peaks at ${found.peakPh.toFixed(2)}.`;
    case 'wait': {
      const meanwhile =
        found.shareOfDose > 0
          ? `go on with ${Math.round(found.shareOfDose * 100)} % of the dose, since without any it would fall faster than your daily limit`
          : 'dose nothing';
      return found.days === undefined
        ? `First ${way}: ${meanwhile}; it does not get there within two months. Change water with a salt that holds less.`
        : `First ${way}: wait about ${found.days.toFixed(1)} days and ${meanwhile}. It falls by at most ${found.largestDailyDkh.toFixed(2)} dKH in a day. Then begin.`;
    }
  }
}
