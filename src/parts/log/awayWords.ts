import { toFigures } from '../../../shared/units/digits';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { beyondText, firstText } from '../../../shared/verdict/boughtText';
import { spanText } from '../../../shared/verdict/clockText';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { lineValue } from '../../../shared/verdict/lineTexts';
import { dayOf } from '../../../shared/verdict/measures';
import { watchedText } from '../../../shared/verdict/outsideSentences';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold, LogAnswer, NobodyLooks } from '../../ask/outcome';
import { failureName } from '../drills/failureNames';

type Unnoticed = NobodyLooks['failures'][number];

const dkh = (value: number) => figure(value, 1);
/** As fine as anybody fills. */
export const litres = (value: number) => figure(toFigures(value, 3));
const downDays = (value: number) => figure(Math.floor(value * 10) / 10);
const percent = (share: number) => figure(Math.round(100 * share));
/** "06:00". */
export const hourText = (hour: number) => `${String(Math.floor(hour)).padStart(2, '0')}:00`;

/** "pH above 8.6" of every line that is told apart, each once. */
const beyondTexts = (lines: readonly LineResult[]): string => lines.map(beyondText).join(', ');

type Need = AwayTold['away']['needs'][number];

/** Litres to be filled in of what may be used at most. */
export const fillText = ({ needL }: Need): string =>
  needL === undefined ? say.panel.tooMuch : litres(needL);

/** Litres that a vessel is left with. */
export const leaveText = ({ pump }: Need, { scenario }: AwayTold['away']['provided']): string =>
  litres(pump === undefined ? scenario.topOff.reservoirL : scenario.dosers[pump]!.stockL);

/** How long what a vessel holds now lasts. */
export function lastsText({ lastsDays, surelyDays }: Need): string {
  const { throughout, lastsDays: told, lastsBut } = say.panel;
  if (surelyDays === undefined) return throughout;
  const surely = downDays(surelyDays);
  return lastsDays === undefined ? lastsBut(surely) : told(downDays(lastsDays), surely);
}

/** A vessel that may stand empty before the keeper is back. */
const runsOutText = (need: Need): string[] =>
  need.surelyDays === undefined || need.hasL === 0
    ? []
    : [
        say.lasts(
          need.name === undefined ? say.panel.reservoir : say.named(need.name),
          lastsText(need),
        ),
      ];

/** What is to be left in reservoir and bottles. */
function provisionText({ question, away }: AwayTold): string {
  const told = say.provision;
  const { kind, scenario, refillEveryDays } = away.provided;
  const { topOff, dosers } = scenario;
  const before = question.now;
  const bottles = dosers
    .filter(({ stockL }, i) => stockL !== before.dosers[i]!.stockL)
    .map(({ stockL, name }) => told.bottle(litres(stockL), name));
  const reservoir = {
    asIs: [],
    toppedUp: [],
    mixed: [],
    larger:
      topOff.reservoirL === before.topOff.reservoirL
        ? []
        : [told.reservoirSame(litres(topOff.reservoirL), figure(topOff.gramsPerL))],
    thinner: [
      told.reservoirThinner(
        ...([litres(topOff.reservoirL), figure(topOff.gramsPerL)] as const),
        figure(before.topOff.gramsPerL),
      ),
    ],
    plain: [
      (before.topOff.reservoirL > 0 ? told.reservoirPlain : told.reservoirNew)(
        litres(topOff.reservoirL),
      ),
    ],
  }[kind];
  const fills = [...reservoir, ...bottles];
  return [
    fills.length > 0 ? told.fills(fills.join(', ')) : told.asIs,
    ...(kind === 'toppedUp' ? [told.toppedUp(refillEveryDays)] : []),
    ...(kind === 'mixed' ? [told.mixed(refillEveryDays)] : []),
  ].join('; ');
}

/** Why the limits are not kept: what passes which first, how far, and on which day. */
function breachText({ breach, insideDays }: AwayTold['away']['provided']): [string, string] {
  if (!breach) return [say.leavesRange, String(insideDays + 1)];
  const { quantity, worst, firstH } = breach;
  const value = figureText(lineValue(quantity, worst));
  return [say.passes(beyondText(breach), value), String(dayOf(firstH!))];
}

function wayOutText({ wayOut, asked, comesDays }: AwayTold['away']): string {
  if (wayOut?.kind !== 'fewerDays') return say.wayOut.firstOfAll;
  return asked ? say.wayOut.withVisits(wayOut.days, comesDays) : say.wayOut.fewerDays(wayOut.days);
}

/** The answer in a sentence or two. */
function headline(told: AwayTold): string {
  const { question, away } = told;
  const { asked, provided, wayOut, days, comesDays } = away;
  if (wayOut) {
    return say.leaves(days, ...breachText(asked ?? provided), wayOutText(away));
  }
  if (asked) return say.onlyVisited(days, ...breachText(asked), comesDays);
  return keptText(question, away, provisionText(told));
}

function keptText(
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

function fullestText({ fullest }: AwayTold['away']): string[] {
  if (!fullest) return [];
  return [(fullest.why === 'rim' ? say.rim : say.tooFull)(litres(fullest.litres))];
}

function insideText({ away }: AwayTold): string[] {
  const { insideDays, lines, anyway } = away.provided;
  if (insideDays < away.days) return [];
  return anyway.length > 0
    ? [say.insideBut(beyondTexts(anyway))]
    : [say.inside(watchedText(lines))];
}

function oddsText({ away }: AwayTold): string {
  const { members, leaveShare, lines } = away.odds;
  const leave = Math.round(leaveShare * members);
  const { lines: watched, anyway } = away.provided;
  const passed = lines
    .filter(({ id, share }) => share > 0 && !anyway.some((line) => line.id === id))
    .flatMap(({ id, share }) => {
      const line = watched.find((one) => one.id === id);
      const isLevel = line && !['phChange', 'alkalinityChange', 'omega'].includes(line.quantity);
      return isLevel ? [say.oddsOf(beyondText(line), Math.round(share * members))] : [];
    });
  const odds = say.odds(leave, members);
  return leave === 0 ? odds : `${odds}: ${passed.join(', ')}.`;
}

/** What stands on no reading. */
function assumedText({ question, isRead }: AwayTold, readings: readonly Reading[]): string[] {
  const hasLevel = readings.some(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const { corals, tank } = question.now;
  const by = question.giveOrTakeDkhPerDay;
  return [
    ...(hasLevel ? [] : [say.assumedLevel(dkh(tank.alkalinityDkh))]),
    ...(isRead ? [] : [say.assumedUse(figure(corals.useDkhPerDay, 2), figure(by, 2))]),
  ];
}

/** The answer first, what has to be known beside it, and what may be asked of it. */
export interface AwaySentences {
  readonly headline: string;
  readonly beside: readonly string[];
  readonly more: readonly string[];
}

/** Days away, as the page and the command say them. */
export function awaySentences(
  asked: AwayTold,
  readings: readonly Reading[],
  habits: LogAnswer['habits'] | undefined,
): AwaySentences {
  const { away } = asked;
  const { evaporation, delivery } = away.margins;
  return {
    headline: headline(asked),
    beside: [
      ...(away.wayOut ? [say.wayOut.best(provisionText(asked))] : []),
      ...(away.asked && !away.wayOut ? [keptText(asked.question, away, provisionText(asked))] : []),
      ...fullestText(away),
      ...assumedText(asked, readings),
      ...away.needs
        .filter(({ hasL, dailyL }) => hasL === 0 && dailyL > 0)
        .map(({ dailyL }) => say.noTopOff(litres(dailyL))),
      ...insideText(asked),
      oddsText(asked),
      ...((habits?.doses.length ?? 0) > 0 ? [say.handDoses] : []),
      say.notInIt,
    ],
    more: [
      ...away.needs.flatMap(runsOutText),
      say.margin(percent(evaporation), percent(delivery)),
      say.oddsFrom,
    ],
  };
}

/** When somebody comes, against what has come by then. */
function noticedText({ first, noticedH }: Unnoticed): string {
  const soonestH = first?.reach.soonestH;
  const span = spanText(noticedH);
  return soonestH !== undefined && soonestH > noticedH
    ? say.comesBefore(span)
    : say.comesAfter(span);
}

/** One failure that nobody looks after: what comes first, then harm, then when somebody comes. */
export function failureText(failure: Unnoticed): string {
  const { harm, first } = failure;
  const isSame = harm && first && harm.line.id === first.line.id;
  return [
    firstText(failure),
    ...(harm && !isSame ? [say.harm(beyondText(harm.line), spanText(harm.afterH))] : []),
    noticedText(failure),
  ].join(' ');
}

/** Failures that pass no limit while nobody looks, in one sentence; empty where each does. */
export function harmlessText({ failures }: NobodyLooks, plan: Scenario): string {
  const names = failures.filter(({ first }) => !first).map(({ fault }) => failureName(fault, plan));
  return names.length === 0 ? '' : say.harmless(names.join(', '));
}

/** What fails, and at which hour. */
export const failureTitle = ({ fault, clockHour }: Unnoticed, plan: Scenario): string =>
  say.failure(failureName(fault, plan), hourText(clockHour));

/** The worst of them in a sentence; empty where nothing can fail. */
export function worstSentence({ failures }: NobodyLooks, plan: Scenario): string {
  const [worst] = failures;
  if (!worst) return '';
  return say.worst(failureName(worst.fault, plan), hourText(worst.clockHour), failureText(worst));
}

/** What whoever comes fills in, and how much at most. */
export function topUpText({ topUp, provided, needs }: AwayTold['away']): string {
  const told = say.sheet.topUps;
  if (topUp) return told[topUp.with](litres(topUp.mostL));
  const [reservoir] = needs;
  const { reservoirL } = provided.scenario.topOff;
  const { dailyL, needL, surelyDays } = reservoir!;
  const lasts = needL !== undefined && reservoirL >= needL;
  return [
    lasts || surelyDays === undefined ? told.nothing : told.lasts(downDays(surelyDays)),
    ...(dailyL > 0 ? [told.byHand(litres(dailyL))] : []),
  ].join(' ');
}
