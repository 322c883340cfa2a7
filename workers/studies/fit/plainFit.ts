import { leastSquares, type Problem, type Solution } from './leastSquares';
import type { Model } from './model';

/** Where the use is tried anew when the first attempt ends at a bound, times the hand's figure. */
const OTHER_STARTS = [0.3, 3];
/** So near to the bottom, in σ of one reading, that what follows goes the rest of the way. */
const CLOSE = 0.1;
/** Where slopes over whole steps lead nowhere the tank bends within them: a part of a step follows it. */
const FINER = 0.1;

/** Weighted least squares: readings by their σ, and what is known beforehand as rows of its own. */
export function plainFit(model: Model): Solution {
  const { parameters, happened } = model;
  const { observations, guess } = happened;
  const priors = parameters.flatMap(({ prior }, i) => (prior ? [{ ...prior, i }] : []));
  const initial = parameters.map((parameter) => parameter.initial);
  const withUse = (use: number) => initial.map((v, i) => (parameters[i]!.id === 'use' ? use : v));
  const problem: Problem = {
    targets: [
      ...observations.map(({ value, sigma }) => value / sigma),
      ...priors.map(({ mean, sigma }) => mean / sigma),
    ],
    predict: (at) => [
      ...model.readings(at).map((value, i) => value / observations[i]!.sigma),
      ...priors.map(({ i, sigma }) => at[i]! / sigma),
    ],
    initial,
    otherStarts: OTHER_STARTS.map((times) => withUse(times * guess.useDkhPerDay)),
    min: parameters.map(({ min }) => min),
    max: parameters.map(({ max }) => max),
    mayEnd: parameters.map(({ prior }) => prior !== undefined),
    step: parameters.map(({ step }) => step),
    close: CLOSE,
  };
  const found = leastSquares(problem);
  if (found.converged) return found;
  return leastSquares({
    ...problem,
    initial: found.values,
    otherStarts: [],
    step: problem.step.map((step) => FINER * step),
  });
}
