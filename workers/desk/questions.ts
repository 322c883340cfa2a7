import type { Scenario } from '../../shared/scenario/schema';
import type { Change } from '../../shared/verdict/wantedChange';
import { sampledOptions } from '../engine/sampledOptions';
import type { Effect } from '../studies/whatDidIt';
import type { Job, Question } from './question';
import { runTrial } from './runTrial';

const drills = () => import('./drillQuestions');
const logs = () => import('./logQuestions');

/** Which single change between two plans moved the outcome most. */
async function whatDidIt(
  { from, to }: { from: Scenario; to: Scenario },
  { goesOn }: Job,
): Promise<Effect[] | undefined> {
  const study = await import('../studies/whatDidIt');
  return study.whatDidIt(from, to, (plan) => runTrial(plan, { goesOn }));
}

/** The first change that a trial's verdict asks for, where a run with it is no worse. */
async function firstChange(scenario: Scenario): Promise<Change> {
  const study = await import('../studies/firstChange');
  return study.firstChange(scenario, await sampledOptions(scenario)).change;
}

/** Every question that a worker answers, by name; what a page has of its own is fetched when first asked. */
export const questions = {
  trial: async () => runTrial,
  whatDidIt: async () => whatDidIt,
  firstChange: async () => firstChange,
  spread: async () => (await import('./spreadQuestion')).spread,
  solveGas: async () => (await import('../studies/solveGas')).solveGas,

  drill: async () => (await drills()).drill,
  actsBuy: async () => (await drills()).actsBuy,
  protections: async () => (await drills()).protections,
  wall: async () => (await drills()).wall,
  members: async () => (await drills()).members,
  member: async () => (await drills()).member,
  summary: async () => (await drills()).summary,
  worstHour: async () => (await drills()).worstHour,
  design: async () => (await drills()).design,
  mapRow: async () => (await drills()).mapRow,
  layers: async () => (await drills()).layers,
  responses: async () => (await drills()).responses,

  answer: async () => (await logs()).answer,
  plans: async () => (await logs()).plans,
  turn: async () => (await logs()).turn,
  away: async () => (await logs()).away,
  nobodyLooks: async () => (await logs()).nobodyLooks,
  delivered: async () => (await logs()).delivered,
  usedUp: async () => (await logs()).usedUp,
  season: async () => (await logs()).season,
  steer: async () => (await logs()).steer,
  reaches: async () => (await logs()).reaches,
  correct: async () => (await logs()).correct,
};

export type QuestionName = keyof typeof questions;

/** The question of a name, whatever it is asked. */
export type Questions = {
  readonly [Name in QuestionName]: Awaited<ReturnType<(typeof questions)[Name]>>;
};

/** What is asked comes from a page built with this worker, so that its type holds. */
export async function questionNamed(name: string): Promise<Question<unknown, unknown, unknown>> {
  const find: Record<string, () => Promise<unknown>> = questions;
  const found = await find[name]?.();
  if (!found) throw new Error(`No question is called “${name}”.`);
  return found as Question<unknown, unknown, unknown>;
}
