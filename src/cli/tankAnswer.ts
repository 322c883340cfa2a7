import { countedReadings, type Counted } from '../../shared/log/counted';
import type { Scenario } from '../../shared/scenario/schema';
import type { Answer } from '../../workers/answer';
import { LogDesk, type AwayTold, type Offered, type TurnTold } from '../../workers/logDesk';
import type { LogAnswer } from '../../workers/studies/answerLog';
import type { NobodyLooks } from '../../workers/studies/away/unnoticed';
import type { Correction } from '../../workers/studies/plan/correct';
import type { Offer } from '../../workers/studies/plan/offers';
import { awayAsked } from '../state/awayAsked';
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
  /** Days without the keeper; undefined where none were asked for. */
  readonly absence: { readonly asked: AwayTold; readonly looks: NobodyLooks } | undefined;
}

/** Days away and between visits; 0 days away: nobody asks, 0 between visits: nobody comes. */
export interface Absence {
  readonly days: number;
  readonly visitDays: number;
}

/** The work's outcome; a failure is thrown. */
async function done<T>(asked: Promise<Answer<T>>): Promise<T> {
  const answer = await asked;
  if (answer.kind === 'done') return answer.value;
  throw new RangeError(answer.kind === 'failed' ? answer.failure.message : answer.kind);
}

/** Asks of a tank what the page asks, in the same order; `now` is a local time. */
export async function tankAnswer(
  tank: Tank,
  now: string,
  { days, visitDays }: Absence = { days: 0, visitDays: 0 },
): Promise<TankAnswer> {
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
  const away =
    days > 0
      ? await done(
          desk.away(
            awayAsked(days, visitDays, known),
            ...([plan, counted.readings, known, wanted] as const),
          ),
        )
      : undefined;
  return {
    ...{ tank, plan, counted, answer, plans, chosen },
    correction: await done(desk.correct(question, chosen.scenario, 'sodiumBicarbonate')),
    absence: away && { asked: away, looks: await done(desk.nobodyLooks(away)) },
    turn: await done(desk.turn(plan, counted.readings, known, wanted)),
  };
}
