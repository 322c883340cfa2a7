import { beyondText } from '../drill/boughtText';
import { watchedText } from '../verdict/outsideSentences';
import { say } from '../../../shared/words/away';
import type { AwayTold } from '../../ask/outcome';
import { dkh, beyondTexts } from './texts';

export function keptText(
  { now }: AwayTold['question'],
  { days, provided, odds }: AwayTold['away'],
  what: string,
) {
  const { asSet, low, high } = provided.endsDkh;
  const levels = [now.tank.alkalinityDkh, asSet, low, high].map(dkh);
  const leave = Math.round(odds.leaveShare * odds.members);
  const but = leave > 0 ? say.keptBut(leave, odds.members) : '';
  return say.kept(days, what, ...(levels as [string, string, string, string])) + but;
}

export function insideText({ away }: AwayTold): string[] {
  const { insideDays, lines, anyway } = away.provided;
  if (insideDays < away.days) return [];
  return anyway.length > 0
    ? [say.insideBut(beyondTexts(anyway))]
    : [say.inside(watchedText(lines))];
}

/** Of water that is outside already nobody asks for the odds of leaving. */
export function oddsTexts({ question, away }: AwayTold): string[] {
  const { limits, tank } = question.now;
  const isOut =
    tank.alkalinityDkh < limits.alkalinityLowDkh || tank.alkalinityDkh > limits.alkalinityHighDkh;
  if (isOut) return [];
  const { members, days, leaveShare, lines } = away.odds;
  const leave = Math.round(leaveShare * members);
  const { lines: watched, anyway } = away.provided;
  const passed = lines
    .filter(({ id, share }) => share > 0 && !anyway.some((line) => line.id === id))
    .flatMap(({ id, share }) => {
      const line = watched.find((one) => one.id === id);
      const isLevel = line && !['phChange', 'alkalinityChange', 'omega'].includes(line.quantity);
      return isLevel ? [say.oddsOf(beyondText(line), Math.round(share * members))] : [];
    });
  const odds = say.odds(days, leave, members);
  return [leave === 0 ? odds : `${odds}: ${passed.join(', ')}.`];
}
