import { toFigures } from '../../../shared/units/digits';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { beyondText, firstText } from '../drill/boughtText';
import { spanText } from '../clockText';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { lineValue } from '../lineTexts';
import { dayOf } from '../../../shared/verdict/measures';
import { watchedText } from '../verdict/outsideSentences';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold, LogAnswer, NobodyLooks } from '../../ask/outcome';
import { failureName } from '../drill/failureNames';

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

type Vessel = AwayTold['away']['vessels'][number];

const vesselName = ({ name }: Vessel): string =>
  name === undefined ? say.panel.reservoir : say.named(name);

/** Litres that may be used at most. */
export const neededText = ({ needL }: Vessel): string =>
  needL === undefined ? say.panel.tooMuch : litres(needL);

/** The lines that all of it at once may not pass: "9", "11". */
const harmTexts = ({ limits }: Scenario): [string, string] => [
  figure(limits.phHarmNbs),
  figure(limits.alkalinityHighDkh),
];

/** The most that may stand in a vessel, and why not more. */
export function mostText(
  { harmless, harms, leaveL, pump }: Vessel,
  { kind, scenario }: AwayTold['away']['provided'],
): string {
  const { panel } = say;
  if (!harmless) return panel.anyOfIt;
  const most = litres(harmless.litres);
  const isOther = pump === undefined && (kind === 'thinner' || kind === 'plain');
  if (harmless.why === 'rim') return panel.mostRim(most);
  if (isOther) return panel.mostOther(litres(leaveL), most);
  const told = panel.mostHarm(most, ...harmTexts(scenario));
  return harms ? panel.doesHarm(told) : told;
}

/** Days that so much of a vessel lasts at worst. */
const daysOf = (most: number, { dailyMostL }: Vessel): string => downDays(most / dailyMostL);

/** A vessel in which may not stand all that may be needed. */
function tooFullText(vessel: Vessel, now: Scenario): string[] {
  const { harmless, mostUsedL, dailyMostL, name } = vessel;
  if (!harmless || dailyMostL === 0 || harmless.litres >= (mostUsedL ?? Infinity)) return [];
  const [most, lasts] = [litres(harmless.litres), daysOf(harmless.litres, vessel)];
  if (harmless.why === 'rim') return [say.rim(most, lasts)];
  const lines = harmTexts(now);
  return [
    name === undefined
      ? say.tooFull(most, lasts, ...lines)
      : say.bottleTooFull(name, most, lasts, ...lines),
  ];
}

/** What is left although all of it at once does harm. */
const harmsText = ({ name, leaveL, harmless }: Vessel): string =>
  name === undefined
    ? say.harmsReservoir(litres(leaveL), litres(harmless!.litres))
    : say.harmsBottle(litres(leaveL), name, litres(harmless!.litres));

/** How long what a vessel holds now lasts. */
function lastsText({ lastsDays, surelyDays }: Vessel): string {
  const { throughout, lastsDays: told, lastsBut } = say.panel;
  if (surelyDays === undefined) return throughout;
  const surely = downDays(surelyDays);
  return lastsDays === undefined ? lastsBut(surely) : told(downDays(lastsDays), surely);
}

/** A vessel that may stand empty before the keeper is back. */
const runsOutText = (vessel: Vessel): string[] =>
  vessel.surelyDays === undefined || vessel.hasL === 0
    ? []
    : [say.lasts(vesselName(vessel), lastsText(vessel))];

/** What is to be left in the reservoir. */
function reservoirText({ question, away }: AwayTold): string {
  const told = say.provision;
  const { kind, scenario } = away.provided;
  const { reservoirL, gramsPerL, additive } = scenario.topOff;
  const before = question.now.topOff;
  if (reservoirL === 0) return before.reservoirL === 0 ? told.noReservoir : told.empty;
  if (kind === 'thinner') {
    return told.reservoirThinner(litres(reservoirL), figure(gramsPerL), figure(before.gramsPerL));
  }
  if (before.reservoirL === 0) return told.reservoirNew(litres(reservoirL));
  return additive === 'none' || gramsPerL === 0
    ? told.reservoirPlain(litres(reservoirL))
    : told.reservoirSame(litres(reservoirL), figure(gramsPerL));
}

/** What is to be left in reservoir and bottles, and what whoever comes fills up again. */
function provisionText(asked: AwayTold): string {
  const told = say.provision;
  const { vessels, topUps, comesDays, provided } = asked.away;
  const bottles = vessels.flatMap(({ name, leaveL }) =>
    name === undefined ? [] : [told.bottle(litres(leaveL), name)],
  );
  const fillsUp = topUps.map((one) =>
    one.pump !== undefined
      ? told.withStock(provided.scenario.dosers[one.pump]!.name)
      : one.with === 'mix'
        ? told.withMix
        : told.withPlain,
  );
  return [
    told.leave([reservoirText(asked), ...bottles].join(', ')),
    ...(fillsUp.length > 0 ? [told.visits(comesDays, fillsUp.join(', '))] : []),
  ].join('; ');
}

/** What ends a promise, on which day, and what passes which limit after that. */
interface WhyNot {
  readonly why: string;
  readonly day: number;
  readonly then?: WhyNot | undefined;
}

function passesWhat(breach: LineResult): WhyNot {
  const { quantity, worst, firstH } = breach;
  const value = figureText(lineValue(quantity, worst));
  return { why: say.passes(beyondText(breach), value), day: dayOf(firstH!) };
}

/** Why it does not last: what passes which limit or stands empty first, and how far. */
export function whyNot(provided: AwayTold['away']['provided']): WhyNot {
  const { breach, empties, insideDays, scenario } = provided;
  const emptyH = (empties?.days ?? Infinity) * 24;
  if (empties && emptyH <= (breach?.firstH ?? Infinity)) {
    const { pump } = empties;
    const vessel =
      pump === undefined ? say.panel.reservoirIs : say.panel.bottleIs(scenario.dosers[pump]!.name);
    return { why: say.empties(vessel), day: dayOf(emptyH), then: breach && passesWhat(breach) };
  }
  return breach ? passesWhat(breach) : { why: say.leavesRange, day: insideDays + 1 };
}

function wayOutText({ wayOut, asked, provided, comesDays }: AwayTold['away']): string {
  if (wayOut?.kind !== 'fewerDays') return say.wayOut[wayOut?.kind ?? 'firstOfAll'];
  if (!asked) return say.wayOut.fewerDays(wayOut.days);
  const { why, day } = whyNot(provided);
  return say.wayOut.withVisits(wayOut.days, comesDays, why, String(day));
}

/** What does harm all at once and is left all the same; empty where nothing does. */
export function harmsSentence({ vessels }: AwayTold['away']): string {
  const harms = vessels.filter((vessel) => vessel.harms).map(harmsText);
  return harms.length > 0 ? say.harms(harms.join(', ')) : '';
}

/** The answer in a sentence or two; what does harm all at once first. */
const headline = (told: AwayTold): string =>
  [harmsSentence(told.away), answerText(told)].filter((text) => text !== '').join(' ');

function answerText(told: AwayTold): string {
  const { question, away } = told;
  const { asked, provided, wayOut, days, comesDays } = away;
  const { why, day } = whyNot(asked ?? provided);
  if (wayOut) return say.leaves(days, why, String(day), wayOutText(away));
  if (asked) return say.onlyVisited(days, why, String(day), comesDays);
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

/** Vessels in which may not stand all that may be needed, and from which level that is reckoned. */
function fullestTexts({ question, away }: AwayTold): string[] {
  const told = away.vessels.flatMap((vessel) => tooFullText(vessel, question.now));
  return told.length > 0 ? [...told, say.fromNow(dkh(question.now.tank.alkalinityDkh))] : [];
}

function insideText({ away }: AwayTold): string[] {
  const { insideDays, lines, anyway } = away.provided;
  if (insideDays < away.days) return [];
  return anyway.length > 0
    ? [say.insideBut(beyondTexts(anyway))]
    : [say.inside(watchedText(lines))];
}

function oddsText({ away }: AwayTold): string {
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
      ...fullestTexts(asked),
      ...assumedText(asked, readings),
      ...away.vessels
        .filter(({ hasL, dailyL }) => hasL === 0 && dailyL > 0)
        .map(({ dailyL }) => say.noTopOff(litres(dailyL))),
      ...insideText(asked),
      oddsText(asked),
      ...((habits?.doses.length ?? 0) > 0 ? [say.handDoses] : []),
      say.notInIt,
    ],
    more: [
      ...away.vessels.flatMap(runsOutText),
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

/** What whoever comes fills in, how much at most, and what may be used up before the keeper is back. */
export function topUpTexts({ topUps, provided, vessels }: AwayTold['away']): string[] {
  const told = say.sheet.topUps;
  const fills = topUps.map(({ pump, with: what, mostL }) => {
    const mark = litres(vessels.find((vessel) => vessel.pump === pump)!.leaveL);
    return pump === undefined
      ? told[what](mark, litres(mostL))
      : told.bottle(provided.scenario.dosers[pump]!.name, mark, litres(mostL));
  });
  const isFilledUp = (vessel: Vessel) => topUps.some(({ pump }) => pump === vessel.pump);
  const lasts = vessels.flatMap((vessel) => {
    const { name, leaveL, mostUsedL, dailyMostL } = vessel;
    if (isFilledUp(vessel) || dailyMostL === 0 || leaveL >= (mostUsedL ?? Infinity)) return [];
    const days = daysOf(leaveL, vessel);
    return [name === undefined ? told.lasts(days) : told.bottleLasts(name, days)];
  });
  const [reservoir] = vessels as [Vessel];
  const byHand =
    !isFilledUp(reservoir) && reservoir.dailyL > 0 ? [told.byHand(litres(reservoir.dailyL))] : [];
  const stays = [...fills, ...lasts];
  return [...(stays.length > 0 ? stays : [told.nothing]), ...byHand];
}
