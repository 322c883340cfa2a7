import { extent } from 'd3-array';
import { usualHandAir } from '../../shared/faults/handAir';
import { hoursOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import type { Carbonate } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { sampledOptions } from '../engine/sampledOptions';
import { answerLog, FORECAST_DAYS, type LogAnswer, type Unanswered } from '../studies/answerLog';
import { away as awayFrom, type Away, type AwayQuestion } from '../studies/away/away';
import { nobodyLooks as nobodyLooksIn, type NobodyLooks } from '../studies/away/unnoticed';
import { tooLittle } from '../studies/fit/tooLittle';
import { asItGoesOn } from '../studies/forecast/goingOn';
import type { ByHand, Dose } from '../studies/forecast/habit';
import type { RanUntil } from '../studies/fit/turnedAt';
import type { Correction } from '../studies/plan/correct';
import { correctBefore } from '../studies/plan/correctBefore';
import { LONGEST_CORRECTION_DAYS, untilKnown } from '../studies/turn/untilKnown';
import { PLAN_DAYS } from '../studies/plan/holding';
import { offers as offersFor, type Offer } from '../studies/plan/offers';
import { planQuestion, type Known, type Wanted } from '../studies/plan/planQuestion';
import type { PlanQuestion } from '../studies/plan/threePlans';
import { steer as steerOf, type Steered } from '../studies/turn/steer';
import { withPoured } from '../studies/season/pouredSince';
import { season as seasonOf, type Season, type SeasonQuestion } from '../studies/season/season';
import { SEASON_DAYS } from '../studies/season/weeks';
import { reaches as reachesLevel, REACHED_DAYS, type Reached } from '../studies/turn/reaches';
import { deliveredOf, type Delivery, type DeliveryQuestion } from '../studies/stock/delivered';
import { PACE_DAYS, usedUp as usedUpBy, type UsedUp } from '../studies/stock/paces';
import { turn as turnOf } from '../studies/turn/turn';
import type { Stretch } from '../studies/turn/replay';
import type { Turn } from '../studies/turn/turned';
import type { Job } from './question';

const LONGEST_TURN_DAYS = 80;
/** Farther off the target than a test errs, dKH. */
const TOLD_DKH = 0.3;

const daysOf = (log: readonly Reading[]) => {
  const [first, last] = extent(log, ({ at }) => hoursOf(at));
  return (last! - first!) / 24;
};

/** Three plans, and what they were made for. */
export interface Offered {
  readonly question: PlanQuestion;
  /** As the log has it on its last day, dKH a day; undefined where no reading tells. */
  readonly readUseDkhPerDay: number | undefined;
  readonly offers: readonly Offer[];
}

/** The smallest change of what runs, and what it was sought for. */
export interface TurnTold {
  readonly question: PlanQuestion;
  readonly turn: Turn;
  /** What brings the water to the target, while no reading tells the use, or where it stands off it and no turn is offered. */
  readonly untilKnown: Correction | undefined;
  /** What is poured in by hand meanwhile, where that is not what the log shows. */
  readonly handMeanwhile?: readonly Dose[] | undefined;
}

export interface LogAsked {
  readonly plan: Scenario;
  readonly log: readonly Reading[];
  readonly withinDkhPerDay: number;
  readonly ran?: readonly RanUntil[];
}

export interface PlanAsked {
  readonly plan: Scenario;
  readonly log: readonly Reading[];
  readonly known: Known | undefined;
  readonly wanted: Wanted;
}

/** A plan's question, with the plan's seasons sampled for so many days. */
async function asked(days: number, { plan, log, known, wanted }: PlanAsked) {
  const options = await sampledOptions(plan, days);
  const question = planQuestion(plan, log, known, wanted, options);
  // What the log tells has been run through the log: what was poured in is in its water.
  const now = known ? question.now : withPoured(question.now, log, options).now;
  return { question: { ...question, now }, options };
}

/** What the log says of the tank that runs by this plan. */
export async function answer(asks: LogAsked): Promise<LogAnswer | Unanswered> {
  const { plan, log, withinDkhPerDay, ran = [] } = asks;
  const reason = tooLittle(log);
  if (reason !== undefined) return reason;
  const options = await sampledOptions(plan, daysOf(log) + FORECAST_DAYS + 2);
  return answerLog(plan, log, withinDkhPerDay, options, ran);
}

/** Three plans that hold the target, replayed. */
export async function plans(asks: PlanAsked): Promise<Offered> {
  const { question, options } = await asked(PLAN_DAYS + 2, asks);
  const readUseDkhPerDay = asks.known?.useNow.dkhPerDay;
  return { question, readUseDkhPerDay, offers: offersFor(question, options) };
}

/** The smallest change of what runs already. */
export async function turn(asks: PlanAsked): Promise<TurnTold> {
  const { question, options } = await asked(LONGEST_TURN_DAYS, asks);
  const found = turnOf({ ...question, plan: asks.plan }, options);
  const { now, targetDkh } = question;
  const off = now.tank.alkalinityDkh - targetDkh;
  const isUnturned = found.kind === 'refused' ? Math.abs(off) > TOLD_DKH : off < -TOLD_DKH;
  if (asks.known && !(found.kind !== 'turn' && isUnturned)) {
    return { question, turn: found, untilKnown: undefined };
  }
  const { correction, byHand } = untilKnown(question, options);
  return { question, turn: found, untilKnown: correction, handMeanwhile: byHand };
}

/** Days without the keeper, what was asked, and whether the use in it was read from the log. */
export interface AwayTold {
  readonly question: AwayQuestion;
  readonly away: Away;
  readonly isRead: boolean;
}

export interface AwayAsked extends PlanAsked {
  /** How long, how often somebody comes, and what the fit says of level and doubts. */
  readonly absence: Omit<AwayQuestion, 'now' | 'giveOrTakeDkhPerDay'>;
}

/** The tank left alone for so many days. */
export async function away({ absence, ...asks }: AwayAsked): Promise<AwayTold> {
  const { question: plan, options } = await asked(absence.days + 3, asks);
  const { now, giveOrTakeDkhPerDay } = plan;
  const question = { ...absence, now, giveOrTakeDkhPerDay };
  return { question, away: awayFrom(question, options), isRead: asks.known !== undefined };
}

/** What may fail meanwhile, with nobody there to notice. */
export async function nobodyLooks(
  { question, away: left }: AwayTold,
  { goesOn }: Job,
): Promise<NobodyLooks | undefined> {
  const options = await sampledOptions(question.now, question.days + 3);
  return nobodyLooksIn(left, usualHandAir, options, goesOn);
}

/** Delivered against set, and what was asked. */
export interface DeliveryTold {
  readonly question: DeliveryQuestion;
  readonly delivery: Delivery;
}

export interface DeliveryAsked extends PlanAsked {
  readonly drawn: DeliveryQuestion['drawn'];
}

/** What a pump or the top-off gave, against what is set. */
export async function delivered({ drawn, ...asks }: DeliveryAsked): Promise<DeliveryTold> {
  const { question: plan, options } = await asked(Math.max(8, drawn.days + 3), asks);
  const question = { now: plan.now, drawn, isRead: asks.known !== undefined };
  return { question, delivery: deliveredOf(question, options) };
}

/** How fast reservoir, bottles, powders and salt go as the tank runs now. */
export async function usedUp(asks: PlanAsked): Promise<UsedUp> {
  const { question, options } = await asked(PACE_DAYS + 2, asks);
  return usedUpBy(question, options);
}

/** A season looked back over and ahead, what was asked, and whether the use in it was read from the log. */
export interface SeasonTold {
  readonly question: SeasonQuestion;
  readonly season: Season;
  readonly isRead: boolean;
}

export interface SeasonAsked extends PlanAsked {
  /** Everything that has happened: months back, while `log` is what the fit counts. */
  readonly happened: readonly Reading[];
  readonly ran: readonly RanUntil[];
  readonly wants: Pick<SeasonQuestion, 'backDays' | 'targets' | 'mostPerDay'>;
  /** The turn, where it is known already. */
  readonly told?: TurnTold;
}

/** Why calcium, magnesium and salinity moved, what to add, and what holds them over a season. */
export async function season(asks: SeasonAsked): Promise<SeasonTold> {
  const { happened, ran, wants, plan: runs, known } = asks;
  const days = Math.max(wants.backDays, SEASON_DAYS) + 2;
  const { question: plan, options } = await asked(days, asks);
  const { giveOrTakeDkhPerDay } = plan;
  const now = asItGoesOn(plan, SEASON_DAYS);
  const { useDkhPerDay } = now.corals;
  const back = { ...wants, plan: runs, readings: happened, ran, useDkhPerDay };
  // What is turned meanwhile: a season and a turn say the same of what is poured.
  const turned = toldRun(asks.told ?? (await turn(asks)));
  const question = { ...back, now, giveOrTakeDkhPerDay, turned };
  return { question, season: seasonOf(question, options), isRead: known !== undefined };
}

export interface SteerAsked {
  readonly plan: Scenario;
  /** The turn that it goes with. */
  readonly told: TurnTold;
  readonly happened: readonly Reading[];
  readonly wants: Pick<SeasonQuestion, 'targets' | 'mostPerDay'>;
}

/** Calcium, magnesium and salinity beside a turn, and what was asked. */
export interface SteerTold {
  readonly readings: readonly Reading[];
  /** Undefined where all that was read stays inside as the tank runs. */
  readonly steered: Steered | undefined;
}

/** What the keeper is told to do for alkalinity, day by day. */
export function toldRun({ question, turn: found, ...told }: TurnTold): readonly Stretch[] {
  const { untilKnown: until, handMeanwhile: doses } = told;
  const { now, byHand } = question;
  const goesOn = (poured: ByHand | undefined, untilDay: number): Stretch => ({
    scenario: asItGoesOn({ now, byHand: poured }, untilDay),
    untilDay,
  });
  if (until?.kind === 'raise' || until?.kind === 'wait') {
    const { scenario } = until;
    const untilDay = scenario.days;
    // Once it has fallen, what was turned down or off goes on as before.
    const after = until.kind === 'wait' ? [goesOn(byHand, untilDay + PLAN_DAYS)] : [];
    return [{ scenario, untilDay }, ...after];
  }
  if (found.kind === 'turn') return found.turned.stretches;
  return doses && byHand ? [goesOn({ ...byHand, doses }, PLAN_DAYS)] : [];
}

/** What brings calcium, magnesium and salinity back, run as one with the turn. */
export async function steer({ plan, told, happened, wants }: SteerAsked): Promise<SteerTold> {
  const options = await sampledOptions(plan, SEASON_DAYS + 2);
  const { giveOrTakeDkhPerDay } = told.question;
  const now = asItGoesOn(told.question, SEASON_DAYS);
  const asked = { ...wants, now, giveOrTakeDkhPerDay, readings: happened };
  return { readings: happened, steered: steerOf({ ...asked, turned: toldRun(told) }, options) };
}

/** When a level is reached as the tank runs now. */
export async function reaches({
  question,
  dkh,
}: {
  question: PlanQuestion;
  dkh: number;
}): Promise<Reached> {
  const options = await sampledOptions(question.now, REACHED_DAYS + 2);
  return reachesLevel(question, dkh, options);
}

export interface CorrectionAsked {
  readonly question: PlanQuestion;
  readonly plan: Scenario;
  readonly additive: Carbonate;
}

/** How the water gets to the target first. */
export async function correct({ question, plan, additive }: CorrectionAsked): Promise<Correction> {
  const options = await sampledOptions(plan, LONGEST_CORRECTION_DAYS);
  return correctBefore(question, plan, additive, options);
}
