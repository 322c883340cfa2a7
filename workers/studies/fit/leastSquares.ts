import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { levenbergMarquardt, type Minimum } from './levenbergMarquardt';

/** Rows to be met, each in units of its own σ, and how the unknowns move them. */
export interface Problem {
  readonly targets: readonly number[];
  readonly predict: (values: readonly number[]) => readonly number[];
  readonly initial: readonly number[];
  /** Where to begin anew when the first attempt ends at a bound, or nowhere. */
  readonly otherStarts?: readonly (readonly number[])[];
  readonly min: readonly number[];
  readonly max: readonly number[];
  /** Unknowns that may end at a bound without that being a reason to begin anew. */
  readonly mayEnd?: readonly boolean[];
  /** Steps of the difference quotients. */
  readonly step: readonly number[];
  /** The slopes, where they are known without difference quotients. */
  readonly jacobian?: (values: readonly number[]) => Square;
  /** Nearer than this to the bottom, in rows' units, is at the bottom. */
  readonly close?: number;
  readonly mostRounds?: number;
}

export type Square = readonly (readonly number[])[];

export interface Solution extends Minimum {
  /** (JᵀJ)⁻¹: rows are already divided by their σ. Undefined where the rows do not tell an unknown. */
  readonly covariance: Square | undefined;
}

/** Weighted least squares within bounds, from as many starts as it takes. */
export function leastSquares(problem: Problem): Solution {
  let best: Minimum | undefined;
  for (const initial of [problem.initial, ...(problem.otherStarts ?? [])]) {
    const found = levenbergMarquardt({ ...problem, initial });
    if (!best || isBetter(found, best)) best = found;
    if (best.converged && best.atBound.every((i) => problem.mayEnd?.[i])) break;
  }
  return { ...best!, covariance: inverseOf(informationOf(best!.jacobian)) };
}

const isBetter = (found: Minimum, best: Minimum): boolean =>
  found.converged === best.converged ? found.chiSquare < best.chiSquare : found.converged;

function informationOf(jacobian: Square): Matrix {
  const j = new Matrix(jacobian.map((row) => [...row]));
  return j.transpose().mmul(j);
}

/** The inverse of what should be positive definite, scaled first; undefined where it is not. */
function inverseOf(information: Matrix): Square | undefined {
  const scale = information.diagonal().map((value) => 1 / Math.sqrt(value));
  const scaled = information
    .to2DArray()
    .map((row, i) => row.map((v, k) => v * (scale[i]! * scale[k]!)));
  if (scaled.some((row) => !row.every(Number.isFinite))) return undefined;
  const root = new CholeskyDecomposition(new Matrix(scaled));
  if (!root.isPositiveDefinite()) return undefined;
  const inverse = root.solve(Matrix.eye(scale.length)).to2DArray();
  // Rounding leaves it a last digit short of symmetric.
  return inverse.map((row, i) =>
    row.map((value, k) => ((value + inverse[k]![i]!) / 2) * scale[i]! * scale[k]!),
  );
}

/** Variance jCjᵀ of what moves with the unknowns as the row j says. */
export const varianceOf = (row: readonly number[], covariance: Square): number =>
  row.reduce((sum, a, i) => sum + row.reduce((s, b, k) => s + a * covariance[i]![k]! * b, 0), 0);
