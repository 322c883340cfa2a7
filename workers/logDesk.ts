import { extent } from 'd3-array';
import { hoursOf } from '../shared/log/localTime';
import type { Reading } from '../shared/log/reading';
import { sentence } from '../shared/scenario/problem';
import type { Scenario } from '../shared/scenario/schema';
import { sampleFactors } from '../shared/units/sampleFactors';
import { answering, type Answer } from './answer';
import { usualOptions, type SimulationOptions } from './engine/simulation';
import type { Carbonate } from '../shared/recipe/twoPart';
import { answerLog, FORECAST_DAYS, type LogAnswer } from './studies/answerLog';
import { tooLittle } from './studies/fit/tooLittle';
import { worstDump, type WorstDump } from './studies/drill/worstDump';
import { correct, type Correction } from './studies/plan/correct';
import { PLAN_DAYS } from './studies/plan/holding';
import { threePlans, type Candidate, type PlanQuestion } from './studies/plan/threePlans';

/** The options with the scenario's expressions of time, sampled for so many days. */
async function optionsFor(plan: Scenario, days: number): Promise<SimulationOptions> {
  const sampled = await sampleFactors({ ...plan, days });
  if (!sampled.ok) throw new RangeError(sampled.problems.map(sentence).join(' '));
  return { ...usualOptions, factors: sampled.factors };
}

const LONGEST_CORRECTION_DAYS = 64;

const daysOf = (log: readonly Reading[]) => {
  const [first, last] = extent(log, ({ at }) => hoursOf(at));
  return (last! - first!) / 24;
};

/** A candidate with its worst stuck-pump drill. */
export interface Offer extends Candidate {
  readonly worstDump: WorstDump | undefined;
}

/** Everything that is asked of a test log. */
export class LogDesk {
  /** What the log says of the tank that runs by this plan. */
  answer(
    plan: Scenario,
    log: readonly Reading[],
    withinDkhPerDay: number,
  ): Promise<Answer<LogAnswer | string>> {
    return answering(async () => {
      const reason = tooLittle(log);
      if (reason !== undefined) return reason;
      const options = await optionsFor(plan, daysOf(log) + FORECAST_DAYS + 2);
      return answerLog(plan, log, withinDkhPerDay, options);
    });
  }

  /** Three plans that hold the target, replayed. */
  plans(question: PlanQuestion): Promise<Answer<readonly Offer[]>> {
    return answering(async () => {
      const options = await optionsFor(question.now, PLAN_DAYS + 2);
      return threePlans(question, options).map((candidate) => ({
        ...candidate,
        worstDump: worstDump(candidate.scenario),
      }));
    });
  }

  /** How the water gets to the target first. */
  correct(upkeep: Scenario, targetDkh: number, additive: Carbonate): Promise<Answer<Correction>> {
    return answering(async () =>
      correct(upkeep, targetDkh, additive, await optionsFor(upkeep, LONGEST_CORRECTION_DAYS)),
    );
  }
}
