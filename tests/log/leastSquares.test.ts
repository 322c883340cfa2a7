import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../workers/studies/fit/leastSquares';
import { misses } from '../reference/check';
import { nistChecks, solvedSet, strdSets } from '../reference/checks/nistStrd';

const line = (t: readonly number[], y: readonly number[], sigma: number) => ({
  targets: y.map((value) => value / sigma),
  predict: ([a, b]: readonly number[]) => t.map((time) => (a! + b! * time) / sigma),
  initial: [1, 1],
  ...{ min: [-50, -50], max: [50, 50], step: [0.1, 0.1] },
});

describe('least squares', () => {
  it('solves a straight line as the textbook does, covariance included', () => {
    const t = [0, 1, 2.5, 4, 7];
    const y = [8.4, 8.2, 8.3, 7.7, 7.1];
    const sigma = 0.15;
    const { values, covariance, converged } = leastSquares({ ...line(t, y, sigma), close: 1e-6 });
    const mean = t.reduce((sum, time) => sum + time, 0) / t.length;
    const spread = t.reduce((sum, time) => sum + (time - mean) ** 2, 0);
    const slope = t.reduce((sum, time, i) => sum + (time - mean) * y[i]!, 0) / spread;
    expect(converged).toBe(true);
    expect(values[1]).toBeCloseTo(slope, 7);
    expect(Math.sqrt(covariance![1]![1]!)).toBeCloseTo(sigma / Math.sqrt(spread), 9);
  });

  it('meets the certified values and standard errors of the NIST sets', () => {
    expect(misses(nistChecks())).toEqual([]);
  });

  it('says of the one set that no damped step leads home that it did not converge', () => {
    const mgh10 = strdSets().find(({ name }) => name === 'MGH10')!;
    expect(solvedSet(mgh10, 0).converged).toBe(false);
    expect(solvedSet(mgh10, 1).converged).toBe(true);
  });

  it('puts an unknown that would leave on its bound, and solves the others anew', () => {
    // Far from the origin level and slope go together: clamping one alone leads astray.
    const problem = line([100, 101, 102, 103], [1, 2, 3, 4], 1);
    let looks = 0;
    const { values, atBound, converged } = leastSquares({
      ...{ ...problem, initial: [3, 0], min: [-500, -50], max: [500, 0.5], close: 1e-6 },
      predict: (at) => {
        looks++;
        return problem.predict(at);
      },
    });
    expect(converged).toBe(true);
    expect(atBound).toEqual([1]);
    // With the slope held at 0.5 the level is the mean of what is left: 2.5 − 0.5 · 101.5.
    expect(values[0]).toBeCloseTo(-48.25, 5);
    expect(values[1]).toBe(0.5);
    // Without solving anew it takes half as many looks again.
    expect(looks).toBeLessThan(22);
  });

  it('begins anew elsewhere when the first start ends at a bound', () => {
    // Nothing is left over at 2; from −2 it goes down to the bound at −3, where 5 is left over.
    const problem = {
      targets: [0],
      predict: ([x]: readonly number[]) => [(x! - 2) * (x! + 4) ** 2],
      initial: [-2],
      ...{ min: [-3], max: [5], step: [1e-6], close: 1e-9 },
    };
    expect(leastSquares(problem).atBound).toEqual([0]);
    expect(leastSquares({ ...problem, otherStarts: [[1]] }).values[0]).toBeCloseTo(2, 6);
    expect(leastSquares({ ...problem, otherStarts: [[1]], mayEnd: [true] }).values[0]).toBe(-3);
  });

  it('does not give a covariance where the rows do not tell an unknown', () => {
    const blind = {
      targets: [1, 2],
      predict: ([a]: readonly number[]) => [a!, a!],
      initial: [0, 0],
      ...{ min: [-9, -9], max: [9, 9], step: [0.1, 0.1] },
    };
    const { covariance, converged } = leastSquares(blind);
    expect(covariance).toBeUndefined();
    expect(converged).toBe(false);
  });

  it('ends no higher than a general-purpose library on the same residuals', () => {
    for (const set of strdSets().filter(({ name }) => ['Misra1a', 'Rat42'].includes(name))) {
      const theirs = levenbergMarquardt(
        { x: [...set.x], y: [...set.y] },
        (at: number[]) => set.model(at),
        {
          initialValues: [...set.starts[1]!],
          damping: 1e-2,
          maxIterations: 300,
          gradientDifference: 1e-7,
          centralDifference: true,
        },
      );
      expect(solvedSet(set, 1).chiSquare).toBeLessThanOrEqual(theirs.parameterError * (1 + 1e-9));
    }
  });
});
