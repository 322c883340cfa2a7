import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { Problem, Square } from './leastSquares';

/** Where the sum of squares is least, as far as one start leads. */
export interface Minimum {
  readonly values: readonly number[];
  /** Rows by unknowns, in units of each row's σ. */
  readonly jacobian: Square;
  readonly chiSquare: number;
  readonly converged: boolean;
  /** The unknowns that stopped at an end of their range. */
  readonly atBound: readonly number[];
}

const MOST_ROUNDS = 40;
/** A hundredth of a σ is nearer than any reading tells. */
const CLOSE = 0.01;
/** Nielsen's first damping, on a Hessian scaled to ones. */
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e16;
/** Slopes by difference quotients are a little off: where steps gain nothing, this near is there. */
const NEARLY = 5;

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/** Difference quotients, taken inwards where a bound is near. */
function quotients(
  { predict, max, step }: Problem,
  values: readonly number[],
  here: readonly number[],
) {
  const columns = values.map((value, i) => {
    const move = value + step[i]! > max[i]! ? -step[i]! : step[i]!;
    const there = predict(values.with(i, value + move));
    return here.map((row, k) => (there[k]! - row) / move);
  });
  return here.map((_, k) => columns.map((column) => column[k]!));
}

/** Solves (H + damping·D²)·x = g for the free unknowns; undefined when the rows do not tell them. */
function solve(
  hessian: Square,
  scale: readonly number[],
  gradient: readonly number[],
  free: readonly number[],
  damping: number,
): number[] | undefined {
  const step = gradient.map(() => 0);
  if (free.length === 0) return step;
  const scaled = free.map((i) =>
    free.map((k) => hessian[i]![k]! / (scale[i]! * scale[k]!) + (i === k ? damping : 0)),
  );
  const root = new CholeskyDecomposition(new Matrix(scaled));
  if (!root.isPositiveDefinite()) return undefined;
  const found = root.solve(Matrix.columnVector(free.map((i) => gradient[i]! / scale[i]!)));
  free.forEach((i, k) => (step[i] = found.get(k, 0) / scale[i]!));
  return step;
}

/**
 * Levenberg–Marquardt: Marquardt's scaling by the steepest slopes seen (Moré 1978), damping by
 * Nielsen 1999, bounds by an active set: an unknown that would leave is put on its bound and the
 * others are solved anew. It stops where the undamped step would move the rows by next to nothing.
 */
export function levenbergMarquardt(problem: Problem): Minimum {
  const { targets, predict, min, max, close = CLOSE, mostRounds = MOST_ROUNDS } = problem;
  const clamped = (values: readonly number[]) =>
    values.map((value, i) => Math.max(min[i]!, Math.min(max[i]!, value)));
  const leftOf = (rows: readonly number[]) => targets.map((target, k) => target - rows[k]!);
  let values = clamped(problem.initial);
  let rows = predict(values);
  let left = leftOf(rows);
  let chiSquare = dot(left, left);
  let scale = values.map(() => 0);
  let damping = FIRST_DAMPING;
  let gained = Infinity;
  for (let round = 0; ; round++) {
    const jacobian = problem.jacobian?.(values) ?? quotients(problem, values, rows);
    const columns = values.map((_, i) => jacobian.map((row) => row[i]!));
    const hessian = columns.map((a) => columns.map((b) => dot(a, b)));
    const gradient = columns.map((column) => dot(column, left));
    scale = scale.map((s, i) => Math.max(s, Math.sqrt(hessian[i]![i]!)) || 1);
    const isHeld = (i: number) =>
      (values[i]! <= min[i]! && gradient[i]! <= 0) || (values[i]! >= max[i]! && gradient[i]! >= 0);
    const atBound = values.flatMap((_, i) => (isHeld(i) ? [i] : []));
    const free = values.flatMap((_, i) => (isHeld(i) ? [] : [i]));
    const whole = solve(hessian, scale, gradient, free, 0);
    const far = whole ? Math.sqrt(Math.max(0, dot(whole, gradient))) : Infinity;
    const converged = far <= close || (far <= NEARLY * close && gained <= close ** 2);
    const here = { values, jacobian, chiSquare, atBound };
    if (converged || round >= mostRounds) return { ...here, converged };
    let raise = 2;
    for (;;) {
      const there = stepFrom(damping);
      const step = there.map((value, i) => value - values[i]!);
      const curved = step.map((_, i) => dot(hessian[i]!, step));
      const foreseen = 2 * dot(step, gradient) - dot(step, curved);
      const trialRows = predict(there);
      const trialLeft = leftOf(trialRows);
      const trial = dot(trialLeft, trialLeft);
      const gain = (chiSquare - trial) / foreseen;
      if (trial < chiSquare && foreseen > 0) {
        gained = chiSquare - trial;
        [values, rows, left, chiSquare] = [there, trialRows, trialLeft, trial];
        damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3);
        break;
      }
      damping *= raise;
      raise *= 2;
      if (damping > MOST_DAMPING) return { ...here, converged: far <= NEARLY * close };
    }

    /** One damped step; whoever would leave the range is put on its end, the rest solved again. */
    function stepFrom(damped: number): number[] {
      const there = [...values];
      const stays = new Set<number>();
      for (;;) {
        const loose = free.filter((i) => !stays.has(i));
        const pushed = gradient.map((g, i) =>
          [...stays].reduce((sum, k) => sum - hessian[i]![k]! * (there[k]! - values[k]!), g),
        );
        const step = solve(hessian, scale, pushed, loose, damped)!;
        const leaving = loose.filter(
          (i) => values[i]! + step[i]! < min[i]! || values[i]! + step[i]! > max[i]!,
        );
        for (const i of loose) there[i] = values[i]! + step[i]!;
        for (const i of leaving) {
          there[i] = clamped(there)[i]!;
          stays.add(i);
        }
        if (leaving.length === 0) return there;
      }
    }
  }
}
