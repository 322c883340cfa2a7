import type { LineResult } from '../../../shared/verdict/lineResult';
import { figure } from '../../../shared/words/figure';
import { asSentence } from '../../../shared/words/sentence';
import { say } from '../../../shared/words/turn';
import type { Turned } from '../../ask/outcome';
import { limits, dkhText, plain, twoFigures, gramsText, passed } from './texts';
import type { Around } from './known';
import { whatToTurn } from './whatToTurn';

export function turnedSentences(turned: Turned, scoopG: number, { answer }: Around): string[] {
  const { settled, also, endedBy } = turned;
  return [
    headlineOf(turned),
    ...pourSentence(turned, scoopG),
    ...(settled ? [say.between(dkhText(settled.lowDkh), dkhText(settled.highDkh))] : []),
    ...((answer?.habits.doses.length ?? 0) > 0 ? [say.handDoses] : []),
    promiseSentence(turned),
    ...(endedBy ? [endSentence(endedBy.breach, endedBy.firstH)] : []),
    ...alsoSentences(also),
  ];
}

/** What else the runs say: how fast it moves, and how high pH goes. */
export function movesSentence(turned: Turned): string {
  const { largestDailyDkh, peakPh, allowedDkh, scenario } = turned;
  const limit = scenario.limits.alkalinityChangeDkhPerDay;
  const swings = largestDailyDkh > limit && allowedDkh > limit;
  return (swings ? say.swings : say.moves)(
    ...([figure(largestDailyDkh, 2), limits(limit), figure(peakPh, 2)] as const),
  );
}

/** What goes outside with the turn or without it. */
export const alsoSentences = (also: readonly LineResult[]): string[] =>
  also
    .filter(({ quantity }) => quantity !== 'alkalinityChange')
    .map((line) => asSentence(say.also(...passed(line, line.firstH!))));

function headlineOf(turned: Turned): string {
  const { lever, levelDkh, targetDkh, settled, low, high } = turned;
  const told = say.turn;
  const way = [dkhText(levelDkh), dkhText(targetDkh)] as const;
  const arrives =
    settled && settled.days > 0 ? told.arrives(...way, settled.days) : told.holds(...way);
  const ends = [low, high].map((end) => (lever === 'mix' ? figure(end, 2) : twoFigures(end)));
  return `${whatToTurn(turned)}; ${arrives}; ${told.range(ends[0]!, ends[1]!, told.units[lever])}.`;
}

function pourSentence({ first, scenario }: Turned, scoopG: number): string[] {
  if (first.kind !== 'pour') return [];
  const { gramsPerDay, additive, mornings } = first;
  return [say.pour(gramsText(gramsPerDay, additive, scenario, scoopG), mornings)];
}

function promiseSentence({ scenario: { limits: band }, promisedDays }: Turned): string {
  const ends = [plain(band.alkalinityLowDkh), plain(band.alkalinityHighDkh)] as const;
  return say.promised(...ends, promisedDays);
}

const endSentence = (line: LineResult, firstH: number): string =>
  say.endedBy(...passed(line, firstH));
