export type { Reading } from '../../shared/log/reading';
export { sampledOptions } from '../engine/sampledOptions';
export {
  answerLog,
  FORECAST_DAYS,
  type LogAnswer,
  type Unanswered,
  type UseNow,
} from './answerLog';
export type { RanUntil } from './fit/turnedAt';
export { away, type Away, type AwayQuestion } from './away/away';
export { nobodyLooks, type NobodyLooks, type Unnoticed } from './away/unnoticed';
export { firstChange, type FirstChange } from './firstChange';
export { correct, type Correction } from './plan/correct';
export { correctBefore } from './plan/correctBefore';
export { PLAN_DAYS } from './plan/holding';
export { offers, type Offer } from './plan/offers';
export { planQuestion, type Wanted } from './plan/planQuestion';
export { threePlans, type Candidate, type PlanQuestion } from './plan/threePlans';
export { pacesOf, type SupplyPace } from './stock/paces';
export { usualMostPerDay, type MostPerDay } from '../../shared/recipe/mostPerDay';
export { usualTargets, type SeasonTargets } from '../../shared/recipe/seasonTargets';
export { season, type Season, type SeasonQuestion } from './season/season';
export { deliveredOf, type Delivered, type Delivery } from './stock/delivered';
export { reaches, type Reached } from './turn/reaches';
export { steer, type Steered } from './turn/steer';
export { turn, type TurnQuestion } from './turn/turn';
export type { NearestTurn, Turn, Turned } from './turn/turned';
