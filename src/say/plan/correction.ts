import { wordFor } from '../../../shared/scenario/words';
import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import type { Correction } from '../../ask/outcome';

const told = say.correction;
/** Nearer than a test can tell, dKH. */
const TEST_DKH = 0.2;

/** How the water gets from what it is to the target, in a sentence or two. */
export function correctionSentence(
  found: Correction,
  nowDkh: number,
  targetDkh: number,
  giveOrTakeDkhPerDay: number,
): string {
  const way = [figure(nowDkh, 1), figure(targetDkh, 1)] as const;
  switch (found.kind) {
    case 'none':
      return told.none(way[0]);
    case 'tooFast':
      return (nowDkh < targetDkh ? told.risesTooFast : told.fallsTooFast)(
        ...way,
        figure(found.mostDkhPerDay),
      );
    case 'tooHighPh':
      return found.additive === 'sodiumCarbonate'
        ? told.tooHighPh(...way, wordFor(found.additive), figure(found.limitNbs))
        : told.tooHighPhAnyway(...way, figure(found.limitNbs));
    case 'unsure':
      return told.unsure(...way, figure(found.giveOrTakeDkhPerDay, 2));
    case 'rises':
      return told.rises(...way, found.days, figure(found.largestDailyDkh, 2));
    case 'raise': {
      const dose = told.grams(figure(found.gramsPerDay), wordFor(found.additive));
      const effect = told.raised(figure(found.largestDailyDkh, 2), figure(found.peakPh, 2));
      const { alkalinityChangeDkhPerDay: mostDkhPerDay } = found.scenario.limits;
      const after = [
        ...(found.stopsFor === 'band' ? [told.stopsShort] : []),
        ...endsOf(found.endsDkh, giveOrTakeDkhPerDay),
      ];
      const begins =
        found.stopsFor === 'day'
          ? told.raiseOnce(...way, dose)
          : told.raise(...way, dose, found.days);
      const moves = found.largestDailyDkh > mostDkhPerDay;
      const why = moves ? [told.movesAnyway(figure(mostDkhPerDay))] : [];
      return [begins, ...after, effect, ...why].join(' ');
    }
    case 'wait': {
      const meanwhile =
        found.shareOfDose > 0
          ? told.goOn(Math.round(found.shareOfDose * 100), dosedText(found.scenario))
          : told.doseNothing;
      return found.days === undefined
        ? told.tooSlow(...way, meanwhile)
        : told.wait(
            ...way,
            daysOf(found.days, found.daysBetween),
            meanwhile,
            figure(found.largestDailyDkh, 2),
          );
    }
  }
}

/** Where it may stand afterwards, if that is wider than a test can tell. */
const endsOf = ([low, high]: readonly [number, number], giveOrTake: number): readonly string[] =>
  high - low > TEST_DKH ? [told.ends(figure(giveOrTake, 2), figure(low, 1), figure(high, 1))] : [];

/** "4.8", or "4.5 to 6.3" where the consumption makes a day's difference. */
function daysOf(
  days: number,
  [soonest = days, latest]: Extract<Correction, { kind: 'wait' }>['daysBetween'],
): string {
  if (latest === undefined) return told.orNever(figure(soonest, 1));
  return latest - soonest < 1
    ? figure(days, 1)
    : told.between(figure(soonest, 1), figure(latest, 1));
}

/** What goes on meanwhile, as a keeper mixes and sets it. */
/** What a plan still doses, in a list. */
export function dosedText({ topOff, dosers }: Scenario): string {
  const { dosing } = say;
  const additive = topOff.gramsPerL > 0 ? topOff.additive : 'none';
  return [
    ...(additive === 'none' ? [] : [dosing.topOff(figure(topOff.gramsPerL, 2), wordFor(additive))]),
    ...dosers.map(({ mlPerDay, name }) => dosing.doser(figure(mlPerDay, 1), name)),
  ].join(', ');
}
