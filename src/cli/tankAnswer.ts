import { countedReadings, type Counted } from '../../shared/log/counted';
import type { Scenario } from '../../shared/scenario/schema';
import type { Answer } from '../../workers/answer';
import { LogDesk, type Offered, type TurnTold } from '../../workers/logDesk';
import type { LogAnswer } from '../../workers/studies/answerLog';
import type { Correction } from '../../workers/studies/plan/correct';
import type { Offer } from '../../workers/studies/plan/offers';
import { ranUntil } from '../state/ranUntil';
import type { Tank } from '../state/tanks';

/** Everything that is told of a tank: what the page's log shows and works out. */
export interface TankAnswer {
  readonly tank: Tank;
  readonly plan: Scenario;
  readonly counted: Counted;
  /** A sentence where the log says nothing yet: plans then go by the typed use. */
  readonly answer: LogAnswer | string;
  readonly plans: Offered;
  /** The first that is offered, else the first of all: the correction goes with its dosing. */
  readonly chosen: Offer;
  readonly correction: Correction;
  readonly turn: TurnTold;
}

/** The work's outcome; a failure is thrown. */
async function done<T>(asked: Promise<Answer<T>>): Promise<T> {
  const answer = await asked;
  if (answer.kind === 'done') return answer.value;
  throw new RangeError(answer.kind === 'failed' ? answer.failure.message : answer.kind);
}

/** Asks of a tank what the page asks, in the same order; `now` is a local time. */
export async function tankAnswer(tank: Tank, now: string): Promise<TankAnswer> {
  const desk = new LogDesk();
  const { log, bench } = tank;
  const plan = bench.plans[0]!.scenario;
  const counted = countedReadings(log, now);
  const answer = await done(
    desk.answer(plan, counted.readings, log.withinDkhPerDay, ranUntil(bench)),
  );
  const known = typeof answer === 'object' ? answer : undefined;
  const { targetDkh, scoopG, pumpMlPerMin } = log;
  const wanted = { targetDkh, kit: { scoopG, pumpMlPerMin } };
  const plans = await done(desk.plans(plan, counted.readings, known, wanted));
  const chosen = plans.offers.find(({ offered }) => offered) ?? plans.offers[0]!;
  const { question } = plans;
  return {
    ...{ tank, plan, counted, answer, plans, chosen },
    correction: await done(desk.correct(question, chosen.scenario, 'sodiumBicarbonate')),
    turn: await done(desk.turn(plan, counted.readings, known, wanted)),
  };
}
