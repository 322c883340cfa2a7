import type { Scenario } from '../../../shared/scenario/schema';
import { toppedOffLPerDay } from '../../../shared/verdict/measures';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { worstDump } from '../drill/worstDump';
import { dumpHolds, fullestReservoirL } from '../plan/fullDump';
import type { PlanQuestion } from '../plan/threePlans';
import { apartOf } from './apart';
import { allLevers, findTurn } from './findTurn';
import { allowedIn, nearestTurn } from './nearestTurn';
import type { Refusal } from './promised';
import { dayMeans } from '../dayMeans';
import type { Replay } from './replay';
import { Seeker, type Attempt, type Held } from './seeker';
import type { Turn, Turned, TurnedPump } from './turned';

/** What is asked of a turn: the plan's question, and what the tank runs by as the keeper has it. */
export interface TurnQuestion extends PlanQuestion {
  readonly plan: Scenario;
}

/**
 * The smallest change of what runs already that brings the water to the target within the daily limit
 * and holds it: of all that can be turned, what moves by the least share; one more channel where none
 * of them does. Every number of it was run by the engine, from the newest water.
 */
export function turn(question: TurnQuestion, options: SimulationOptions = usualOptions): Turn {
  const { targetDkh } = question;
  const seeker = new Seeker(question, targetDkh, options);
  const levers = allLevers(seeker);
  if (levers.own.length === 0) return { kind: 'nothingRuns' };
  const attempt = findTurn(seeker, levers, targetDkh, allowedIn(question));
  if (attempt.kind === 'turn') {
    const refusal = starving(seeker, attempt, targetDkh);
    if (refusal) return { kind: 'refused', refusal, nearest: { kind: 'calcium' } };
    return told(seeker, question, attempt);
  }
  const { refusal } = attempt;
  return { ...attempt, nearest: nearestTurn(question, seeker, levers, refusal, options) };
}

/**
 * Why no less is brought to water that is to rise: corals that run out of calcium take less, and who
 * brings them calcium, as is told beside it, would see it fall.
 */
function starving(
  { calciumRunsOut: breach, now }: Seeker,
  { held: { lever, to } }: Extract<Attempt, { kind: 'turn' }>,
  targetDkh: number,
): Refusal | undefined {
  const isLow = now.tank.alkalinityDkh <= targetDkh;
  return breach && isLow && to < lever.from
    ? { kind: 'breach', breach, firstH: breach.firstH! }
    : undefined;
}

/** The whole of it, its own full dump included. */
function told(
  seeker: Seeker,
  { plan, targetDkh, giveOrTakeDkhPerDay }: TurnQuestion,
  {
    held,
    way,
    replays,
    promise,
    settledDays,
    allowedDkh,
    whyNotOwn,
  }: Extract<Attempt, { kind: 'turn' }>,
): Turn {
  const { now } = seeker;
  const { lever, to } = held;
  const scenario = lever.set(now, to);
  // What is poured in by hand stands in no plan, but in the log.
  const inForce = (value: number) => (lever.kind === 'hand' ? plan : lever.set(plan, value));
  const { topOff } = scenario;
  const full = { ...scenario, tank: { ...scenario.tank, alkalinityDkh: targetDkh } };
  const brings = topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;
  const { first, stretches } = way;
  const turned: Turned = {
    ...promise,
    ...{ lever: lever.kind, from: lever.from, to, first, targetDkh, allowedDkh },
    ...{ dose: lever.dose, insteadOf: lever.insteadOf },
    ...range(seeker, held, giveOrTakeDkhPerDay),
    levelDkh: now.tank.alkalinityDkh,
    pumps: turnedPumps(now, scenario),
    apart: seeker.unlinked ? apartOf(seeker, held, way) : undefined,
    settled: { days: settledDays, ...between(replays, settledDays) },
    largestDailyDkh: Math.max(...replays.map(({ largestMoveDkh }) => largestMoveDkh)),
    peakPh: Math.max(...replays.map((replay) => replay.peakPh)),
    toppedOffLPerDay: toppedOffLPerDay(seeker.runPlan({ ...scenario, days: 7 }).trace),
    worstDump: brings ? worstDump(full) : undefined,
    fullestL: brings && !dumpHolds(full) ? fullestReservoirL(full) : undefined,
    whyNotOwn,
    dkh: replays[0]!.dkh,
    held: scenario,
    scenario: stretches[0]!.scenario,
    plan: inForce(first.kind === 'less' ? first.to : to),
    heldPlan: inForce(to),
    stretches,
  };
  return { kind: 'turn', turned };
}

/** The doubt of a setting: where it would hold at either end of the use, by a straight line. */
function range(seeker: Seeker, { lever, to, dkhPerUnit }: Held, giveOrTakeDkhPerDay: number) {
  const [, less, more] = seeker
    .uses(giveOrTakeDkhPerDay)
    .map((use) => to - seeker.restsOffDkh(lever, to, use) / dkhPerUnit);
  return {
    low: lever.rounded(Math.max(0, Math.min(less!, to))),
    high: lever.rounded(Math.min(lever.most, Math.max(more!, to))),
  };
}

/** Between what the water is on a day, over all uses. */
function between(replays: readonly Replay[], day: number): { lowDkh: number; highDkh: number } {
  const means = replays.map(({ dkh }) => dayMeans(dkh)[day] ?? NaN);
  return { lowDkh: Math.min(...means), highDkh: Math.max(...means) };
}

/** Every pump whose dose is another, and those that are new. */
function turnedPumps(before: Scenario, after: Scenario): TurnedPump[] {
  return after.dosers.flatMap(({ name, mlPerDay: toMlPerDay }, i) => {
    const fromMlPerDay = before.dosers[i]?.mlPerDay ?? 0;
    return fromMlPerDay === toMlPerDay ? [] : [{ name, fromMlPerDay, toMlPerDay }];
  });
}
