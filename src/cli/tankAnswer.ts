import { countedReadings, type Counted } from '../../shared/log/counted';
import type { Scenario } from '../../shared/scenario/schema';
import * as ask from '../../workers/desk/logQuestions';
import type { Offered, TurnTold } from '../../workers/desk/logQuestions';
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

/** Asks of a tank what the page asks, in the same order; `now` is a local time. */
export async function tankAnswer(tank: Tank, now: string): Promise<TankAnswer> {
  const { log, bench } = tank;
  const plan = bench.plans[0]!.scenario;
  const counted = countedReadings(log, now);
  const { readings } = counted;
  const { withinDkhPerDay } = log;
  const answer = await ask.answer({ plan, log: readings, withinDkhPerDay, ran: ranUntil(bench) });
  const known = typeof answer === 'object' ? answer : undefined;
  const { targetDkh, scoopG, pumpMlPerMin } = log;
  const wanted = { targetDkh, kit: { scoopG, pumpMlPerMin } };
  const asked = { plan, log: readings, known, wanted };
  const plans = await ask.plans(asked);
  const chosen = plans.offers.find(({ offered }) => offered) ?? plans.offers[0]!;
  const { question } = plans;
  const correction = { question, plan: chosen.scenario, additive: 'sodiumBicarbonate' } as const;
  return {
    ...{ tank, plan, counted, answer, plans, chosen },
    correction: await ask.correct(correction),
    turn: await ask.turn(asked),
  };
}
