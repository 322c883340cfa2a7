import { newestOf } from '../../../shared/log/newest';
import type { Reading } from '../../../shared/log/reading';
import { bringsAlkalinity } from '../../../shared/species/additives';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/turn';
import { say as plans } from '../../../shared/words/plans';
import type { SteerTold, TurnTold } from '../../ask/outcome';
import { dkhText, gramsText, limits, plain } from './texts';
import { dosedText } from '../plan/correction';
import { isUntold } from '../../ask/isUntold';
import { roseUnexplained } from '../../ask/roseUnexplained';
import { strayDkh } from '../../ask/testsSooner';
import { handInParts, handSentences } from './byHand';
import { type Around, waitsFor } from './known';
import { testFirst, type Sentences } from './testFirst';
import { turnedSentences } from './turned';
import { refusedSentences } from './refused';
import { unreadSentences } from './unread';

/** What is turned, as the page and the command say it; what goes beside it is told by itself. */
export function turnSentences(asked: TurnTold, around: Around, beside?: SteerTold): Sentences {
  const { headline, more } = toldTurn(asked, around, beside);
  return { headline, more: [...more, ...tooHighSentences(asked, around)] };
}

/** What not to do about water that stands too high; a reading that is doubted is tested again first. */
function tooHighSentences({ question }: TurnTold, around: Around): string[] {
  const high = question.now.limits.alkalinityHighDkh;
  const newest = newestOf(around.readings, 'alkalinityDkh');
  const isHigh = newest !== undefined && newest.value > high;
  return isHigh && !isStray(around) ? [say.tooHigh(plain(high))] : [];
}

function toldTurn(asked: TurnTold, around: Around, beside?: SteerTold): Sentences {
  const { question, turn } = asked;
  const newest = newestOf(around.readings, 'alkalinityDkh');
  if (!newest) return { headline: say.noReading, more: [] };
  const raised = raiseSentences(asked, around);
  const falls = fallSentence(asked);
  if (turn.kind === 'nothingRuns') {
    if (waitsFor(around) === undefined && tellsNoUse(around)) {
      return { headline: say.refused.untold, more: [] };
    }
    const headline = raised[0] ?? say.nothingRuns;
    const more = [
      ...raised.slice(1),
      ...(raised.length > 0 ? [say.nothingRunsBeside] : []),
      ...(around.readings.some(poursAlkalinity) ? [say.fewPours] : []),
    ];
    return testFirst(around, headline) ?? { headline, more };
  }
  const waits = waitsFor(around);
  // Readings that would have the tank bring alkalinity are no ground for a way down or a refusal.
  const rests = waits === 'level' ? !isStray(around) : waits === undefined;
  if ((falls !== undefined || turn.kind === 'refused') && rests && tellsNoUse(around)) {
    return { headline: say.refused.untold, more: [] };
  }
  if (falls !== undefined && around.answer && waits === undefined) {
    const { doses } = around.answer.habits;
    return { headline: falls, more: doses.length > 0 ? [say.handPauses] : [] };
  }
  const steered = beside?.steered?.wanting.map(({ id }) => id) ?? [];
  const told = [
    ...(turn.kind === 'refused'
      ? [...(around.answer ? raised : []), ...refusedSentences(turn, question.targetDkh)]
      : turnedSentences(turn.turned, question.kit.scoopG, around, steered)),
    ...unreadSentences(turn, around, steered),
  ];
  if (around.answer) {
    return testFirst(around, told[0]!) ?? { headline: told[0]!, more: told.slice(1) };
  }
  // By a use that nobody has measured nothing is to be turned.
  const use = question.now.corals.useDkhPerDay;
  const assumedUse = [figure(use, 2), figure(question.giveOrTakeDkhPerDay, 2)] as const;
  if (falls !== undefined) return { headline: falls, more: [say.assumedFall(...assumedUse)] };
  const assumed = say.assumed(...assumedUse);
  const [headline, ...more] = [...raised, assumed, say.byThatUse(told[0]!)];
  return { headline: headline!, more };
}

/** Whether the newest reading is borne out by none beside it. */
const isStray = ({ answer }: Around): boolean =>
  answer !== undefined && strayDkh(answer) !== undefined;

const poursAlkalinity = ({ additive, grams }: Reading): boolean =>
  additive !== undefined && grams !== undefined && bringsAlkalinity(additive);

const tellsNoUse = ({ answer, readings }: Around): boolean =>
  answer !== undefined && (isUntold(answer) || roseUnexplained(answer, readings));

/** How water that stands too high comes down; undefined where it does not, or nothing brings it there. */
function fallSentence({ question, untilKnown }: TurnTold): string | undefined {
  if (untilKnown?.kind !== 'wait') return undefined;
  const { now, targetDkh } = question;
  const { days, daysBetween, shareOfDose, largestDailyDkh } = untilKnown;
  const way = [dkhText(now.tank.alkalinityDkh), dkhText(targetDkh)] as const;
  if (days === undefined) return say.fall.tooSlow(...way);
  const [soonest = days, latest] = daysBetween.map((day) => day && Math.max(1, Math.ceil(day)));
  const meanwhile =
    shareOfDose === 0 ? say.fall.nothing : say.fall.goOn(dosedText(untilKnown.scenario));
  return say.fall.waits(...way, soonest, latest, meanwhile, figure(largestDailyDkh, 2));
}

/** What the water needs whatever the use, with what runs left as it is; empty where nothing is poured. */
function raiseSentences(
  { question, untilKnown, handMeanwhile }: TurnTold,
  around: Around,
): string[] {
  if (untilKnown?.kind !== 'raise') return handMeanwhile ? handInParts(around, handMeanwhile) : [];
  const { now, targetDkh, giveOrTakeDkhPerDay: by, kit } = question;
  const { additive, gramsPerDay, days, largestDailyDkh, peakPh, stopsFor } = untilKnown;
  // As it is told above: what is typed of the tank is the use in the water that it refers to.
  const use = around.answer?.useNow.dkhPerDay ?? now.corals.useDkhPerDay;
  const dose = gramsText(gramsPerDay, additive, now, kit.scoopG);
  const way = [dkhText(now.tank.alkalinityDkh), dkhText(targetDkh)] as const;
  const uses = [figure(Math.max(0, use - by), 2), figure(use + by, 2)] as const;
  const limit = now.limits.alkalinityChangeDkhPerDay;
  return [
    stopsFor === 'day' ? say.raiseOnce(...way, dose) : say.raise(...way, dose, days),
    (around.answer ? say.raiseHolds : say.raiseAssumed)(
      ...uses,
      figure(largestDailyDkh, 2),
      figure(peakPh, 2),
    ),
    ...(largestDailyDkh > limit ? [plans.correction.movesAnyway(limits(limit))] : []),
    ...(stopsFor === 'band' ? [plans.correction.stopsShort] : []),
    ...(handMeanwhile ? handInParts(around, handMeanwhile) : handSentences(around)),
  ];
}
