import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { worstDump, type WorstDump } from '../drill/worstDump';
import { threePlans, type Candidate, type PlanQuestion } from './threePlans';

/** A candidate with its worst stuck-pump drill. */
export interface Offer extends Candidate {
  readonly worstDump: WorstDump | undefined;
}

/** Three plans that hold the target, each with what a stuck pump would do at worst. */
export const offers = (
  question: PlanQuestion,
  options: SimulationOptions = usualOptions,
): Offer[] =>
  threePlans(question, options).map((candidate) => ({
    ...candidate,
    worstDump: worstDump(candidate.scenario),
  }));
