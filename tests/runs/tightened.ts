import type { Scenario } from '../../shared/scenario/schema';
import { readColumn, type Crossing } from '../../shared/trace/trace';
import { run, type Run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';

const MINUTE_H = 1 / 60;
/** What grazes a limit more slowly than this, an hour, crosses it at no sharp moment. */
const SLOW = { ph_nbs: 0.01, alkalinity_dkh: 0.02 };

export function largestDifference(a: Float64Array, b: Float64Array): number {
  if (a.length !== b.length) throw new RangeError(`${a.length} rows against ${b.length}`);
  return a.reduce((worst, value, i) => Math.max(worst, Math.abs(value - b[i]!)), 0);
}

/** Slope around a moment, from the hourly rows. */
function perH({ trace }: Run, column: keyof typeof SLOW, timeH: number): number {
  const values = readColumn(trace, column);
  const hour = Math.min(values.length - 2, Math.floor(timeH));
  return Math.abs(values[hour + 1]! - values[hour]!);
}

const grazes = (trial: Run, { limit, timeH }: Crossing) => {
  const column = limit.startsWith('ph') ? 'ph_nbs' : 'alkalinity_dkh';
  const isOfIt = limit.startsWith('ph') || limit.startsWith('alkalinity');
  return isOfIt && perH(trial, column, timeH) < SLOW[column];
};

/** Crossings of one run that the other does not have within so many hours. */
function unmatched(own: readonly Crossing[], others: readonly Crossing[], withinH: number) {
  return own.filter(
    (a) =>
      !others.some(
        (b) => b.limit === a.limit && b.into === a.into && Math.abs(b.timeH - a.timeH) <= withinH,
      ),
  );
}

/** The same plan with a tenth of the error allowed: what that moves. */
export function tightened(scenario: Scenario) {
  const usual = run(scenario);
  const { toleranceUmolPerKg } = usualOptions;
  const tight = run(scenario, { toleranceUmolPerKg: toleranceUmolPerKg / 10 });
  const sharp = (trial: Run) => trial.crossings.filter((crossing) => !grazes(trial, crossing));
  return {
    ph: largestDifference(readColumn(usual.trace, 'ph_nbs'), readColumn(tight.trace, 'ph_nbs')),
    alkalinityDkh: largestDifference(
      readColumn(usual.trace, 'alkalinity_dkh'),
      readColumn(tight.trace, 'alkalinity_dkh'),
    ),
    crossings: sharp(usual).length,
    moved: [
      ...unmatched(sharp(usual), tight.crossings, MINUTE_H),
      ...unmatched(sharp(tight), usual.crossings, MINUTE_H),
    ],
    grazing: usual.crossings.filter((crossing) => grazes(usual, crossing)),
  };
}
