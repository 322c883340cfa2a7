import { toDecimals, toFigures } from '../../../shared/units/digits';
import type { Reading } from '../../../shared/log/reading';
import { lineTexts, lineValue, limitText } from '../lineTexts';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { dayOf } from '../../../shared/verdict/measures';
import { wordFor } from '../../../shared/scenario/words';
import { figure, figureText } from '../../../shared/words/figure';
import { asSentence } from '../../../shared/words/sentence';
import { say } from '../../../shared/words/turn';
import { say as plans } from '../../../shared/words/plans';
import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import type { LogAnswer, NearestTurn, Turned, TurnTold } from '../../ask/outcome';

/** What is known beside the turn itself. */
export interface Around {
  readonly readings: readonly Reading[];
  /** What was fitted to them; undefined where they say nothing yet. */
  readonly answer: Pick<LogAnswer, 'fit' | 'habits'> | undefined;
}

/** A level that is known no better is none to turn anything by, dKH at two standard errors. */
const TORN_DKH = 0.6;

const levelBy = ({ fit }: Pick<LogAnswer, 'fit'>) => 2 * Math.sqrt(fit.now.covariance[0]![0]!);

/** Whether use and level are known well enough to turn something by them. */
export const isKnown = (answer: Around['answer']): boolean =>
  answer !== undefined && levelBy(answer) <= TORN_DKH;

/** The answer first, then what comes with it; each a sentence or two. */
export interface TurnSentences {
  readonly headline: string;
  readonly more: readonly string[];
}

const limits = (dkh: number) => figure(toDecimals(dkh, 2));
const dkhText = (dkh: number) => figure(dkh, 1);
const plain = (value: number) => figure(value);
const twoFigures = (value: number) => figure(toFigures(value, 2));

/** What is turned, as the page and the command say it. */
export function turnSentences(asked: TurnTold, around: Around): TurnSentences {
  const { question, turn } = asked;
  if (!around.readings.some(({ alkalinityDkh }) => alkalinityDkh !== undefined)) {
    return { headline: say.noReading, more: [] };
  }
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
  if (isKnown(answer)) return { headline: told[0]!, more: told.slice(1) };
  // Nothing is to be turned by a level that is not known, or by a use that nobody has measured.
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

function turnedSentences(turned: Turned, scoopG: number, { answer }: Around): string[] {
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
const alsoSentences = (also: readonly LineResult[]): string[] =>
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

/** So little is no turn. */
const LEAST_SHARE = 0.01;

function whatToTurn({ lever, from, to, first, pumps, scenario }: Turned): string {
  const told = say.turn;
  const less = first.kind === 'less' ? first : undefined;
  const stays = !less && Math.abs(to - from) <= LEAST_SHARE * from;
  switch (lever) {
    case 'mix':
      if (stays) return told.leaveMix(plain(from));
      return less
        ? told.mixFirst(plain(from), plain(less.to), less.days, plain(to))
        : told.mix(plain(from), plain(to));
    case 'drip':
      if (stays) return told.leaveDrip(plain(from));
      return less
        ? told.dripFirst(plain(from), plain(less.to), less.days, plain(to))
        : told.drip(plain(from), plain(to));
    case 'channel': {
      const [one, two] = pumps;
      const names = [one!.name, two?.name ?? one!.name] as const;
      return less
        ? told.channelFirst(...names, plain(less.to), less.days, plain(to))
        : told.channel(...names, plain(to));
    }
    case 'pump': {
      const [own, ...others] = pumps;
      const name = own?.name ?? scenario.dosers.find(({ mlPerDay }) => mlPerDay === to)?.name ?? '';
      if (stays) return told.leavePump(name, plain(from));
      const main = less
        ? told.pumpFirst(name, plain(from), plain(less.to), less.days, plain(to))
        : told.pump(name, plain(from), plain(to));
      const withIt = others.map((other) =>
        less
          ? told.withFirst(other.name, plain(doseIn(scenario, other.name)), plain(other.toMlPerDay))
          : told.with(other.name, plain(other.toMlPerDay)),
      );
      return [main, ...withIt].join(', ');
    }
  }
}

const doseIn = ({ dosers }: Turned['scenario'], name: string): number =>
  dosers.find((doser) => doser.name === name)?.mlPerDay ?? 0;

function pourSentence({ first, scenario }: Turned, scoopG: number): string[] {
  if (first.kind !== 'pour') return [];
  const { gramsPerDay, additive, mornings } = first;
  return [say.pour(gramsText(gramsPerDay, additive, scenario, scoopG), mornings)];
}

/** "2.44 g of sodium bicarbonate (for 300 L)", and scoops where the keeper has one. */
function gramsText(
  gramsPerDay: number,
  additive: Carbonate,
  { tank }: Scenario,
  scoopG: number,
): string {
  const scoops = scoopG > 0 ? say.scoops(figure(gramsPerDay / scoopG, 1)) : '';
  return say.grams(plain(gramsPerDay), wordFor(additive), plain(Math.round(tank.volumeL))) + scoops;
}

function promiseSentence({ scenario: { limits: band }, promisedDays }: Turned): string {
  const ends = [plain(band.alkalinityLowDkh), plain(band.alkalinityHighDkh)] as const;
  return say.promised(...ends, promisedDays);
}

function refusedSentences(
  { refusal, nearest }: Extract<TurnTold['turn'], { kind: 'refused' }>,
  targetDkh: number,
): string[] {
  const told = say.refused;
  const wayOut = nearest ? nearestSentence(nearest) : told.threePlans;
  switch (refusal.kind) {
    case 'outOfReach':
      return [told.outOfReach(dkhText(targetDkh), dkhText(refusal.restsDkh ?? NaN)), wayOut];
    case 'offTarget':
      return [
        told.offTarget(dkhText(refusal.endsDkh), dkhText(targetDkh)),
        ...alsoSentences(refusal.also),
        wayOut,
      ];
    case 'dump':
      return [told.dump(plain(refusal.fullestL)), wayOut];
    case 'breach':
      return [breachSentence(refusal.breach, refusal.firstH), wayOut];
  }
}

/** What is passed, how far it goes, the limit, and on which day. */
const passed = ({ quantity, worst, limit }: LineResult, firstH: number) =>
  [
    ...([lineTexts[quantity].name, figureText(lineValue(quantity, worst))] as const),
    ...([figureText(limitText(quantity, limit)), String(dayOf(firstH))] as const),
  ] as const;

const breachSentence = (line: LineResult, firstH: number): string =>
  say.refused.breach(...passed(line, firstH));

const endSentence = (line: LineResult, firstH: number): string =>
  say.endedBy(...passed(line, firstH));

function nearestSentence(nearest: NearestTurn): string {
  const told = say.refused;
  switch (nearest.kind) {
    case 'knownUse':
      return told.knownUse(plain(nearest.giveOrTakeDkhPerDay));
    case 'target':
      return told.target(plain(nearest.dkh));
    case 'calcium':
      return told.calcium;
    case 'limit':
      return told.limit(plain(nearest.dkhPerDay));
  }
}
