import { say } from '../../../shared/words/fit';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { asItHappened, type Happened, type Observation } from './asItHappened';
import { leastSquares, varianceOf } from './leastSquares';
import { Model } from './model';
import { parametersOf, type Parameter } from './parameters';

/** A fitted number and its standard error. */
export interface Estimate {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly value: number;
  readonly standardError: number;
  /** Its σ before the log was read; undefined when nothing was known. */
  readonly priorSigma: number | undefined;
}

/** A reading beside what the fit expects of it. */
export interface FittedPoint extends Observation {
  readonly expected: number;
  /** What is left over, in standard errors of just that: residual / σ√(1 − leverage). */
  readonly standardised: number;
}

export interface Fit {
  readonly startAt: string;
  readonly endH: number;
  readonly estimates: readonly Estimate[];
  readonly covariance: readonly (readonly number[])[];
  readonly points: readonly FittedPoint[];
  /** How much wider the readings scatter than their stated σ; 1 when chance explains it. */
  readonly widened: number;
  /** The plan as fitted, from the log's first hour. */
  readonly scenario: Scenario;
}

export const LEAST_READINGS = 2;
const LEAST_DAYS = 1;
/** Wilson & Hilferty's cube root makes χ²/ν nearly normal; one in a hundred lies above this. */
const ONE_IN_A_HUNDRED = 2.326;

/** Why a log cannot be fitted yet; nothing when it can. */
export function tooLittle(log: readonly Reading[]): string | undefined {
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  if (tested.length < LEAST_READINGS) {
    return tested.length === 0 ? say.tooLittle.none : say.tooLittle.one;
  }
  const times = tested.map(({ at }) => hoursOf(at));
  const hours = Math.max(...times) - Math.min(...times);
  return hours < LEAST_DAYS * 24 ? say.tooLittle.tooClose(hours.toFixed(0)) : undefined;
}

/** χ² per degree of freedom when it is more than chance, else 1. */
function excess(chiSquare: number, freedom: number): number {
  if (freedom < 1) return 1;
  const ratio = chiSquare / freedom;
  const width = 2 / (9 * freedom);
  const z = (Math.cbrt(ratio) - (1 - width)) / Math.sqrt(width);
  return z > ONE_IN_A_HUNDRED ? ratio : 1;
}

const estimateOf =
  (values: readonly number[], covariance: readonly (readonly number[])[]) =>
  ({ id, title, unit, prior }: Parameter, i: number): Estimate => ({
    ...{ id, title, unit, value: values[i]! },
    standardError: Math.sqrt(covariance[i]![i]!),
    priorSigma: prior?.sigma,
  });

/**
 * Matches the simulated tank to the log by weighted least squares: readings by their stated σ,
 * and what is known of growth, gas exchange and reagent lots beforehand as readings of their own.
 */
export function fitLog(
  plan: Scenario,
  log: readonly Reading[],
  options: SimulationOptions = usualOptions,
): Fit {
  return fitHappened(asItHappened(plan, log), options);
}

export function fitHappened(happened: Happened, options: SimulationOptions = usualOptions): Fit {
  const parameters = parametersOf(happened);
  const { observations } = happened;
  const model = new Model(happened, parameters, options);
  const priors = parameters.flatMap(({ prior }, i) => (prior ? [{ ...prior, i }] : []));
  const { values, jacobian, covariance } = leastSquares({
    targets: [
      ...observations.map(({ value, sigma }) => value / sigma),
      ...priors.map(({ mean, sigma }) => mean / sigma),
    ],
    predict: (at) => [
      ...Array.from(model.readings(at), (value, i) => value / observations[i]!.sigma),
      ...priors.map(({ i, sigma }) => at[i]! / sigma),
    ],
    initial: parameters.map(({ initial }) => initial),
    min: parameters.map(({ min }) => min),
    max: parameters.map(({ max }) => max),
    step: parameters.map(({ step }) => step),
  });
  const expected = model.readings(values);
  // The leverage of a row: how much it moves with the fit that it helped to make.
  const shares = observations.map((_, i) => varianceOf(jacobian[i]!, covariance));
  const points = observations.map((observation, i) => ({
    ...observation,
    expected: expected[i]!,
    standardised:
      (observation.value - expected[i]!) /
      (observation.sigma * Math.sqrt(Math.max(0.01, 1 - shares[i]!))),
  }));
  const chiSquare = points.reduce((sum, p) => sum + ((p.value - p.expected) / p.sigma) ** 2, 0);
  const freedom = observations.length - shares.reduce((sum, share) => sum + share, 0);
  const scale = excess(chiSquare, freedom);
  const scaled = covariance.map((row) => row.map((value) => value * scale));
  return {
    startAt: happened.startAt,
    endH: happened.endH,
    estimates: parameters.map(estimateOf(values, scaled)),
    covariance: scaled,
    points,
    widened: Math.sqrt(scale),
    scenario: model.scenarioFor(values),
  };
}
