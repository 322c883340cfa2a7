import { extent } from 'd3-array';
import { hoursOf } from '../shared/log/localTime';
import type { Reading } from '../shared/log/reading';
import type { Carbonate } from '../shared/recipe/twoPart';
import type { Scenario } from '../shared/scenario/schema';
import { answering, type Answer } from './answer';
import { sampledOptions } from './engine/sampledOptions';
import { answerLog, FORECAST_DAYS, type LogAnswer } from './studies/answerLog';
import { tooLittle } from './studies/fit/tooLittle';
import type { RanUntil } from './studies/fit/turnedAt';
import { usualHandAir } from '../shared/faults/handAir';
import { letMessagesIn } from './letMessagesIn';
import { away, type Away, type AwayQuestion } from './studies/away/away';
import { nobodyLooks, type NobodyLooks } from './studies/away/unnoticed';
import type { Correction } from './studies/plan/correct';
import { correctBefore } from './studies/plan/correctBefore';
import { PLAN_DAYS } from './studies/plan/holding';
import { offers, type Offer } from './studies/plan/offers';
import { planQuestion, type Wanted } from './studies/plan/planQuestion';
import type { PlanQuestion } from './studies/plan/threePlans';
import { deliveredOf, type Delivery, type DeliveryQuestion } from './studies/stock/delivered';
import { reaches, REACHED_DAYS, type Reached } from './studies/turn/reaches';
import { turn } from './studies/turn/turn';
import type { Turn } from './studies/turn/turned';

const LONGEST_CORRECTION_DAYS = 64;
const LONGEST_TURN_DAYS = 80;

const daysOf = (log: readonly Reading[]) => {
  const [first, last] = extent(log, ({ at }) => hoursOf(at));
  return (last! - first!) / 24;
};

/** Three plans, and what they were made for. */
export interface Offered {
  readonly question: PlanQuestion;
  readonly offers: readonly Offer[];
}

/** The smallest change of what runs, and what it was sought for. */
export interface TurnTold {
  readonly question: PlanQuestion;
  readonly turn: Turn;
}

/** Days without the keeper, what was asked, and whether the use in it was read from the log. */
export interface AwayTold {
  readonly question: AwayQuestion;
  readonly away: Away;
  readonly isRead: boolean;
}

/** How long, how often somebody comes, and what the fit says of level and doubts. */
export type AwayAsked = Omit<AwayQuestion, 'now' | 'giveOrTakeDkhPerDay'>;

/** Delivered against set, and what was asked. */
export interface DeliveryTold {
  readonly question: DeliveryQuestion;
  readonly delivery: Delivery;
}

type PlanAsked = [
  plan: Scenario,
  log: readonly Reading[],
  known: Pick<LogAnswer, 'now' | 'useNow'> | undefined,
  wanted: Wanted,
];

/** A plan's question, with the plan's seasons sampled for so many days. */
async function asked(days: number, ...[plan, log, known, wanted]: PlanAsked) {
  const options = await sampledOptions(plan, days);
  return { question: planQuestion(plan, log, known, wanted, options), options };
}

/** Everything that is asked of a test log. */
export class LogDesk {
  /** What the log says of the tank that runs by this plan. */
  answer(
    plan: Scenario,
    log: readonly Reading[],
    withinDkhPerDay: number,
    ran: readonly RanUntil[] = [],
  ): Promise<Answer<LogAnswer | string>> {
    return answering(async () => {
      const reason = tooLittle(log);
      if (reason !== undefined) return reason;
      const options = await sampledOptions(plan, daysOf(log) + FORECAST_DAYS + 2);
      return answerLog(plan, log, withinDkhPerDay, options, ran);
    });
  }

  /** Three plans that hold the target, replayed. */
  plans(...asks: PlanAsked): Promise<Answer<Offered>> {
    return answering(async () => {
      const { question, options } = await asked(PLAN_DAYS + 2, ...asks);
      return { question, offers: offers(question, options) };
    });
  }

  /** The smallest change of what runs already. */
  turn(...asks: PlanAsked): Promise<Answer<TurnTold>> {
    return answering(async () => {
      const { question, options } = await asked(LONGEST_TURN_DAYS, ...asks);
      return { question, turn: turn({ ...question, plan: asks[0] }, options) };
    });
  }

  /** The tank left alone for so many days. */
  away(absence: AwayAsked, ...asks: PlanAsked): Promise<Answer<AwayTold>> {
    return answering(async () => {
      const { question: plan, options } = await asked(absence.days + 3, ...asks);
      const { now, giveOrTakeDkhPerDay } = plan;
      const question = { ...absence, now, giveOrTakeDkhPerDay };
      return { question, away: away(question, options), isRead: asks[2] !== undefined };
    });
  }

  /** What may fail meanwhile, with nobody there to notice. */
  nobodyLooks({ question, away: left }: AwayTold): Promise<Answer<NobodyLooks>> {
    return answering(async () => {
      const options = await sampledOptions(question.now, question.days + 3);
      return nobodyLooks(left, usualHandAir, options, async () => {
        await letMessagesIn();
        return true;
      });
    });
  }

  /** What a pump or the top-off gave, against what is set. */
  delivered(drawn: DeliveryQuestion['drawn'], ...asks: PlanAsked): Promise<Answer<DeliveryTold>> {
    return answering(async () => {
      const { question: plan, options } = await asked(Math.max(8, drawn.days + 3), ...asks);
      const question = { now: plan.now, drawn, isRead: asks[2] !== undefined };
      return { question, delivery: deliveredOf(question, options) };
    });
  }

  /** When a level is reached as the tank runs now. */
  reaches(question: PlanQuestion, dkh: number): Promise<Answer<Reached>> {
    return answering(async () => {
      const options = await sampledOptions(question.now, REACHED_DAYS + 2);
      return reaches(question, dkh, options);
    });
  }

  /** How the water gets to the target first. */
  correct(
    question: PlanQuestion,
    plan: Scenario,
    additive: Carbonate,
  ): Promise<Answer<Correction>> {
    return answering(async () => {
      const options = await sampledOptions(plan, LONGEST_CORRECTION_DAYS);
      return correctBefore(question, plan, additive, options);
    });
  }
}
