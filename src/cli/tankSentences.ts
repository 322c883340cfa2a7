import {
  driftSentence,
  farAheadSentences,
  habitSentence,
  leavingSentence,
  nextTestSentence,
  outsideSentences,
  slopeSentence,
  typedSentence,
  useSentence,
} from '../say/fit/answer';
import { leapSentences } from '../say/fit/leap';
import { notesOf } from '../say/fit/notes';
import { unansweredSentence } from '../say/fit/unanswered';
import { gettingThere } from '../say/plan/gettingThere';
import { movesSentence } from '../say/turn/turned';
import { steerSentences } from '../say/turn/steer';
import { turnSentences } from '../say/turn/turn';
import { aroundOf, waitsFor, type Around } from '../say/turn/known';
import { awaySentences } from '../say/away/away';
import { failureText, failureTitle, harmlessText, worstSentence } from '../say/away/failures';
import { topUpTexts } from '../say/away/provision';
import { seasonSentences } from '../say/season/season';
import { strayTexts } from '../say/season/moved';
import { say } from '../../shared/words/away';
import { bottleDumps } from '../../shared/recipe/bottleDump';
import { bottleSentence } from '../say/plan/bottle';
import { allPaces, orderText, supplyName } from '../say/stock/order';
import { runsOutText, soonestOut } from '../say/stock/runsOut';
import { promiseOf } from '../say/plan/promise';
import type { ToldOffer } from '../say/plan/offer';
import { turnRecipe } from '../say/turn/turnRecipe';
import type { TankAnswer } from './tankAnswer';

/** What the log says, in the page's own sentences. */
export function logSentences({ answer, plan, counted, now }: TankAnswer): string[] {
  const outside = [
    ...farAheadSentences(counted.happened),
    ...outsideSentences(plan, counted.readings),
  ];
  if ('why' in answer) return [unansweredSentence(answer), ...outside];
  return [
    useSentence(answer),
    ...leapSentences(answer),
    typedSentence(answer),
    slopeSentence(answer),
    driftSentence(answer),
    habitSentence(answer),
    leavingSentence(answer, plan),
    nextTestSentence(answer, now),
    ...outside,
    ...notesOf(answer.fit, plan),
  ].filter((text) => text !== '');
}

const stuckPumps = ({ scenario }: ToldOffer): string[] =>
  bottleDumps(scenario).map((bottle) => bottleSentence(bottle, scenario));

/** A plan, what it promises, and how it is mixed and dosed when it is offered. */
export const planSentences = (offer: ToldOffer): string[] => [
  `${offer.title}. ${promiseOf(offer)}`,
  ...(offer.offered ? [...offer.recipe.mix, ...offer.recipe.dose, ...stuckPumps(offer)] : []),
];

/** How the water gets to the target before the chosen plan holds it. */
export const firstSentence = (told: TankAnswer): string =>
  gettingThere(told.correction, told.question, aroundIn(told), told.chosen);

const aroundIn = ({ answer, plan, ran, counted: { readings }, now }: TankAnswer): Around =>
  aroundOf({ readings, plan, ran, answer: 'why' in answer ? undefined : answer }, now);

/** What to turn of what runs, the answer first. */
export function turnTold(told: TankAnswer): string[] {
  const { turn, steer } = told;
  const around = aroundIn(told);
  const { headline, more } = turnSentences(turn, around, steer);
  const beside = steerSentences(steer, turn, around);
  const found = turn.turn;
  if (found.kind !== 'turn' || waitsFor(around) !== undefined)
    return [headline, ...more, ...beside];
  const recipe = turnRecipe(found.turned, turn);
  return [
    ...[headline, ...more, ...beside, movesSentence(found.turned)],
    ...[...recipe.mix, ...recipe.dose],
  ];
}

/** Days without the keeper, what may fail meanwhile, and what whoever comes tops up. */
export function awayTold(told: TankAnswer): string[] {
  const { absence } = told;
  if (!absence) return [];
  const { asked, looks } = absence;
  const { headline, beside, more } = awaySentences(asked, aroundIn(told));
  const plan = asked.away.provided.scenario;
  const failures = looks.failures.filter(({ first }) => first);
  return [
    ...[headline, ...beside, worstSentence(looks, plan), ...more],
    `${say.sheet.topUp}: ${topUpTexts(asked.away).join(' ')}`,
    ...failures.map((one) => `${failureTitle(one, plan)}. ${failureText(one)}`),
    harmlessText(looks, plan),
  ].filter((text) => text !== '');
}

/** What is left of what is used up, and by when to order it. */
export function ordersTold({ tank: { log }, usedUp, counted, now }: TankAnswer): string[] {
  if (!usedUp) return [];
  const first = soonestOut(log, usedUp, counted, now);
  const orders = allPaces(usedUp.supplies, counted.readings).flatMap((pace) => {
    const supply = log.supplies.find(({ id }) => id === pace.id);
    return supply ? [`${supplyName(pace.id)}: ${orderText(supply, pace, log.shopDays, now)}`] : [];
  });
  return [...orders, ...(first ? [runsOutText(first, now)] : [])];
}

/** Calcium, magnesium and salinity over months, the answer first. */
export function seasonTold(told: TankAnswer): string[] {
  const { season } = told;
  if (!season) return [];
  const { headline, beside, more } = seasonSentences(season, aroundIn(told));
  const strays = strayTexts(season.season).flatMap(({ title, ways }) => [title, ...ways]);
  return [headline, ...beside, ...strays, ...more];
}

/** All of it, for a reader at a terminal. */
export function tankText(told: TankAnswer): string {
  const parts = [
    [told.tank.name],
    logSentences(told),
    turnTold(told),
    ...[seasonTold(told), awayTold(told), ordersTold(told)].filter((part) => part.length > 0),
    ...told.offers.map(planSentences),
    [`${told.chosen.title}: ${firstSentence(told)}`],
  ];
  return `${parts.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
