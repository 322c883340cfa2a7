import type { QuestionName } from './outcome';

/**
 * How a question is worked at. A `trial` is cut so fine that others go on beside it: the picture
 * under a dragged slider waits for it. What goes in `runs` lets messages in every few hundredths of
 * a second. What is worked out `whole` hears nothing meanwhile, and is ended with its worker.
 */
export type Pace = 'trial' | 'runs' | 'whole';

export interface Manner {
  readonly pace: Pace;
  /** So long without a word it may be at work before it is stopped. */
  readonly patienceMs: number;
}

const MINUTES_MS = 60_000;
const trial: Manner = { pace: 'trial', patienceMs: 2 * MINUTES_MS };
const runs: Manner = { pace: 'runs', patienceMs: 2 * MINUTES_MS };
const whole: Manner = { pace: 'whole', patienceMs: 2 * MINUTES_MS };
/** Longer than this a keeper does not wait for what the log says. */
const ofTheLog: Manner = { pace: 'whole', patienceMs: 0.5 * MINUTES_MS };

export const manners: Readonly<Record<QuestionName, Manner>> = {
  trial,
  whatDidIt: runs,
  firstChange: whole,
  spread: runs,
  solveGas: whole,

  drill: runs,
  actsBuy: runs,
  protections: runs,
  wall: runs,
  members: runs,
  member: whole,
  summary: whole,
  worstHour: whole,
  design: whole,
  mapRow: runs,
  layers: whole,
  responses: runs,

  answer: ofTheLog,
  plans: ofTheLog,
  turn: ofTheLog,
  away: ofTheLog,
  nobodyLooks: runs,
  delivered: ofTheLog,
  usedUp: ofTheLog,
  season: whole,
  steer: whole,
  reaches: ofTheLog,
  correct: ofTheLog,
};
