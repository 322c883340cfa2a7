import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { inverse, Matrix } from 'ml-matrix';

/** Rows to be met, each in units of its own σ, and how the unknowns move them. */
export interface Problem {
  readonly targets: readonly number[];
  readonly predict: (values: readonly number[]) => readonly number[];
  readonly initial: readonly number[];
  readonly min: readonly number[];
  readonly max: readonly number[];
  /** Steps of the difference quotients. */
  readonly step: readonly number[];
}

export interface Solution {
  readonly values: readonly number[];
  /** Rows by unknowns, in units of each row's σ. */
  readonly jacobian: readonly (readonly number[])[];
  /** (JᵀJ)⁻¹: rows are already divided by their σ. */
  readonly covariance: readonly (readonly number[])[];
  readonly chiSquare: number;
}

const MOST_ROUNDS = 12;
const ENOUGH = 1e-3;
const DAMPING = 1e-4;
const MORE_DAMPING = 1e4;

/** Difference quotients, taken inwards where a bound is near. */
function jacobianOf({ predict, max, step }: Problem, values: readonly number[]): number[][] {
  const here = predict(values);
  const columns = values.map((value, i) => {
    const move = value + step[i]! > max[i]! ? -step[i]! : step[i]!;
    const there = predict(values.with(i, value + move));
    return here.map((row, k) => (there[k]! - row) / move);
  });
  return here.map((_, k) => columns.map((column) => column[k]!));
}

/**
 * Weighted least squares within bounds. The optimiser takes one step at a time here: by itself it
 * stops only at an error of nothing, and each step costs whole runs of a tank. What it calls
 * parameterError is the sum of squares, no standard error: those come from the Jacobian.
 */
export function leastSquares(problem: Problem): Solution {
  const { targets, predict, min, max, initial } = problem;
  const rows = { x: targets.map((_, i) => i), y: [...targets] };
  let values: readonly number[] = initial;
  let jacobian = jacobianOf(problem, values);
  let chiSquare = sumOfSquares(targets, predict(values));
  let damping = DAMPING;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const tried = levenbergMarquardt(rows, (at) => predicting(predict(at)), {
      initialValues: [...values],
      minValues: [...min],
      maxValues: [...max],
      damping,
      maxIterations: 1,
      jacobianFunction: () => (row) => jacobian[row]!,
    });
    const gained = chiSquare - tried.parameterError;
    if (gained <= 0) {
      // Either at the bottom, or a step too far: one shorter try tells.
      if (damping > DAMPING) break;
      damping *= MORE_DAMPING;
      continue;
    }
    values = tried.parameterValues;
    chiSquare = tried.parameterError;
    // So near the bottom the last slopes still hold.
    if (gained < ENOUGH) break;
    jacobian = jacobianOf(problem, values);
    damping = DAMPING;
  }
  return { values, jacobian, chiSquare, covariance: covarianceOf(jacobian) };
}

const predicting = (rows: readonly number[]) => (row: number) => rows[row]!;

const sumOfSquares = (targets: readonly number[], rows: readonly number[]) =>
  targets.reduce((sum, target, i) => sum + (target - rows[i]!) ** 2, 0);

function covarianceOf(jacobian: readonly (readonly number[])[]): number[][] {
  const j = new Matrix(jacobian.map((row) => [...row]));
  const c = inverse(j.transpose().mmul(j));
  // Rounding leaves it a last digit short of symmetric.
  return Matrix.add(c, c.transpose()).div(2).to2DArray();
}

/** Variance jCjᵀ of what moves with the unknowns as the row j says. */
export const varianceOf = (
  row: readonly number[],
  covariance: readonly (readonly number[])[],
): number =>
  row.reduce((sum, a, i) => sum + row.reduce((s, b, k) => s + a * covariance[i]![k]! * b, 0), 0);
