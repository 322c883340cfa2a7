import { quantileSorted } from 'd3-array';
import { randomLcg, randomNormal } from 'd3-random';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { Band } from '../../../shared/scenario/limitBands';
import type { Fan } from './fan';

/** When the water leaves the keeper's band, with odds. */
export interface Leaving {
  /** Share of the fits that the log allows whose water leaves within the forecast. */
  readonly odds: number;
  readonly side: 'low' | 'high';
  /** Hours since the start of the log by which 1 in 10, and half of them, have left. */
  readonly oneInTenH: number | undefined;
  readonly halfH: number | undefined;
}

const SEED = 0.271828;
const DRAWS = 500;

/** Fits that the log allows, as steps aside from the best one. */
function draws(covariance: readonly (readonly number[])[]): number[][] {
  const root = new CholeskyDecomposition(new Matrix(covariance.map((row) => [...row])))
    .lowerTriangularMatrix;
  const normal = randomNormal.source(randomLcg(SEED))(0, 1);
  return Array.from({ length: DRAWS }, () =>
    root.mmul(Matrix.columnVector(covariance.map(() => normal()))).getColumn(0),
  );
}

/** Undefined when the water is outside already when the log ends. */
export function leavingOf(
  { timesH, dkh, slopes }: Fan,
  covariance: readonly (readonly number[])[],
  fromH: number,
  { low, high }: Band,
): Leaving | undefined {
  const first = timesH.findIndex((timeH) => timeH >= fromH);
  if (dkh[first]! < low || dkh[first]! > high) return undefined;
  const left = draws(covariance).map((step) => {
    for (let k = first; k < timesH.length; k++) {
      const value = dkh[k]! + step.reduce((sum, by, i) => sum + by * slopes[k]![i]!, 0);
      if (value < low || value > high) return { timeH: timesH[k]!, below: value < low };
    }
    return undefined;
  });
  const gone = left.filter((one) => one !== undefined);
  const hours = left.map((one) => one?.timeH ?? Infinity).toSorted((a, b) => a - b);
  const by = (part: number) => {
    const timeH = quantileSorted(hours, part)!;
    return Number.isFinite(timeH) ? timeH : undefined;
  };
  return {
    odds: gone.length / DRAWS,
    side: gone.filter(({ below }) => below).length * 2 >= gone.length ? 'low' : 'high',
    oneInTenH: by(0.1),
    halfH: by(0.5),
  };
}
