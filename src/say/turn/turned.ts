import { newestOf } from '../../../shared/log/newest';
import { LONGEST_NOTE } from '../../../shared/log/reading';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { figure } from '../../../shared/words/figure';
import { asSentence } from '../../../shared/words/sentence';
import { say } from '../../../shared/words/turn';
import type { Turned } from '../../ask/outcome';
import { testBySentences } from '../plan/testBy';
import { limits, dkhText, plain, twoFigures, gramsText, passed } from './texts';
import { handSentences } from './byHand';
import type { Around } from './known';
import { whatToTurn } from './whatToTurn';

/** `steered` is what is told of in a part of its own. */
export function turnedSentences(
  turned: Turned,
  scoopG: number,
  around: Around,
  steered: readonly LineResult['quantity'][] = [],
): string[] {
  const { settled, also, endedBy } = turned;
  return [
    headlineOf(turned),
    ...(turned.whyNotOwn ? whyNotOwn(turned.whyNotOwn) : []),
    ...apartSentence(turned),
    ...unlinkSentence(turned, around),
    ...pourSentence(turned, scoopG),
    ...(settled ? [standsBetween(dkhText(settled.lowDkh), dkhText(settled.highDkh))] : []),
    ...handSentences(around, turned.insteadOf ?? turned.dose),
    ...(turned.dose ? [say.handNoted] : []),
    ...promiseSentences(turned),
    ...(endedBy ? [endSentence(endedBy.breach, endedBy.firstH)] : []),
    ...alsoSentences(also.filter(({ quantity }) => !steered.includes(quantity))),
  ];
}

const standsBetween = (low: string, high: string): string =>
  low === high ? say.about(low) : say.between(low, high);

/** What is written into the log when a turn is run by: what goes with it, poured or later, is not lost. */
export const turnNote = (turned: Turned, scoopG: number, beside = ''): string =>
  `${say.noted([headlineOf(turned), ...pourSentence(turned, scoopG)].join(' '))}${beside}`.slice(
    0,
    LONGEST_NOTE,
  );

/** What unlinking the bottles of a pair does. */
function apartSentence({ apart }: Turned): string[] {
  if (!apart) return [];
  const { pumps, calciumMgPerL, togetherMgPerL, day } = apart;
  const stay = pumps.map(({ name, mlPerDay }) => say.stays(name, plain(mlPerDay))).join(', ');
  return [say.unlinked(stay, figure(calciumMgPerL, 0), figure(togetherMgPerL, 0), day)];
}

/** Where calcium is too high already, what is turned up need not bring more of it. */
function unlinkSentence({ pumps, scenario }: Turned, { readings }: Around): string[] {
  const high = scenario.limits.calciumHighMgPerL;
  const calcium = newestOf(readings, 'calciumMgPerL')?.value ?? 0;
  const isUp = pumps.some(({ fromMlPerDay, toMlPerDay }) => toMlPerDay > fromMlPerDay);
  return calcium > high && isUp && pumps.length > 1
    ? [say.unlinkFirst(figure(calcium, 0), plain(high))]
    : [];
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
  const { lever, from, to, first, levelDkh, targetDkh, settled, low, high } = turned;
  const told = say.turn;
  const way = [dkhText(levelDkh), dkhText(targetDkh)] as const;
  const stays = from === to && first.kind === 'none';
  const isThere = !settled || settled.days === 0;
  const arrives = isThere
    ? (stays ? told.near : told.holds)(...way)
    : told.arrives(...way, settled.days);
  const ends = [low, high].map((end) => (lever === 'mix' ? figure(end, 2) : twoFigures(end)));
  return `${whatToTurn(turned)}; ${arrives}; ${told.range(ends[0]!, ends[1]!, told.units[lever])}.`;
}

function pourSentence({ first, scenario }: Turned, scoopG: number): string[] {
  if (first.kind !== 'pour') return [];
  const { gramsPerDay, additive, mornings } = first;
  return [say.pour(gramsText(gramsPerDay, additive, scenario, scoopG), mornings)];
}

function promiseSentences({ scenario: { limits: band }, promisedDays, settled }: Turned): string[] {
  const ends = [plain(band.alkalinityLowDkh), plain(band.alkalinityHighDkh)] as const;
  // At every use that is possible, and not at the likeliest alone.
  const isThere =
    settled !== undefined &&
    settled.days < promisedDays &&
    settled.lowDkh >= band.alkalinityLowDkh &&
    settled.highDkh <= band.alkalinityHighDkh;
  const promise = isThere ? say.promised(...ends, promisedDays) : say.onItsWay(promisedDays);
  return [promise, ...testBySentences(promisedDays)];
}

/** Why one more channel is proposed, and not more of what is there. */
function whyNotOwn(refusal: NonNullable<Turned['whyNotOwn']>): string[] {
  const told = say.whyNotOwn;
  switch (refusal.kind) {
    case 'dump':
      return [told.dump(plain(refusal.fullestL))];
    case 'outOfReach':
      return refusal.restsDkh === undefined ? [] : [told.outOfReach(dkhText(refusal.restsDkh))];
    case 'breach':
      return [told.breach(...passed(refusal.breach, refusal.firstH))];
    case 'offTarget':
      return [];
  }
}

const endSentence = (line: LineResult, firstH: number): string =>
  say.endedBy(...passed(line, firstH));
