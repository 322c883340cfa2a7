import { newestOf } from '../../../shared/log/newest';
import { spokenDay } from '../../../shared/log/spokenTime';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/turn';
import { say as plans } from '../../../shared/words/plans';
import type { TurnTold } from '../../ask/outcome';
import { dkhText, gramsText } from './texts';
import { type Around, levelBy, waitsFor } from './known';
import { turnedSentences } from './turned';
import { refusedSentences } from './refused';

/** The answer first, then what comes with it; each a sentence or two. */
export interface TurnSentences {
  readonly headline: string;
  readonly more: readonly string[];
}

/** What is turned, as the page and the command say it. */
export function turnSentences(asked: TurnTold, around: Around): TurnSentences {
  const { question, turn } = asked;
  const newest = newestOf(around.readings, 'alkalinityDkh');
  if (!newest) return { headline: say.noReading, more: [] };
  const raised = raiseSentences(asked);
  if (turn.kind === 'nothingRuns') {
    const [headline, ...more] = [...raised, say.nothingRuns];
    return { headline: headline!, more };
  }
  const told =
    turn.kind === 'refused'
      ? refusedSentences(turn, question.targetDkh)
      : turnedSentences(turn.turned, question.kit.scoopG, around);
  const { answer } = around;
  const waits = waitsFor(around);
  if (waits === undefined) return { headline: told[0]!, more: told.slice(1) };
  // Nothing is to be turned by a level that is not known, or by a use that nobody has measured.
  if (waits === 'test') {
    const headline = say.testFirst(spokenDay(newest.at));
    return { headline, more: [say.byThatReading(told[0]!)] };
  }
  if (answer) {
    const headline = say.torn(dkhText(answer.fit.now.dkh), dkhText(levelBy(answer)));
    return { headline, more: [say.byThatLevel(told[0]!)] };
  }
  const use = question.now.corals.useDkhPerDay;
  const assumed = say.assumed(figure(use, 2), figure(question.giveOrTakeDkhPerDay, 2));
  const [headline, ...more] = [...raised, assumed, say.byThatUse(told[0]!)];
  return { headline: headline!, more };
}

/** What the water needs whatever the use, with what runs left as it is; empty where nothing is poured. */
function raiseSentences({ question, untilKnown }: TurnTold): string[] {
  if (untilKnown?.kind !== 'raise') return [];
  const { now, targetDkh, giveOrTakeDkhPerDay: by, kit } = question;
  const { additive, gramsPerDay, days, largestDailyDkh, peakPh, stopsShort } = untilKnown;
  const { useDkhPerDay: use } = now.corals;
  const dose = gramsText(gramsPerDay, additive, now, kit.scoopG);
  const uses = [figure(Math.max(0, use - by), 2), figure(use + by, 2)] as const;
  return [
    say.raise(dkhText(now.tank.alkalinityDkh), dkhText(targetDkh), dose, days),
    say.raiseHolds(...uses, figure(largestDailyDkh, 2), figure(peakPh, 2)),
    ...(stopsShort ? [plans.correction.stopsShort] : []),
  ];
}
