import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { asItHappened, type Happened } from './asItHappened';
import { beforesOf } from './before';
import { fitted, type Fit } from './fitted';
import { thereAndBack } from './leap';
import { Model } from './model';
import { parametersOf, withinBounds } from './parameters';
import { plainFit } from './plainFit';
import { mostLeaps, usualUseOf } from './restlessness';
import { robustly, type Settlement } from './robust';
import { firstWeights } from './studentT';
import type { RanUntil } from './turnedAt';
import { slopesAt, sumOf, type Slopes } from './slopes';

export type { Fit } from './fitted';

/** Farther than this from the last look, in σ of a reading, the slopes are taken anew. */
const FAR = 0.3;
const LOOKS = 3;
/** Where the plain fit found no rest there may be so many. */
const MOST_LOOKS = 8;
/** Where readings scatter so much wider with all leaps, what leaps is the test. */
const WIDE = 2;
/** What is as small once the others are fitted was their doing: two readings of the same water differ by more. */
const LEAST_LEAP_DKH = 0.2;

/** Matches the simulated tank to the log, and says how far each number is known. */
export function fitLog(
  plan: Scenario,
  log: readonly Reading[],
  options: SimulationOptions = usualOptions,
  ran: readonly RanUntil[] = [],
): Fit {
  return fitHappened(asItHappened(plan, log, ran), options);
}

/**
 * First plain least squares on the engine; then, about that run and to first order, readings
 * weighed by Student's t and a tank that wanders. Where that leads far away, once more from there;
 * where the water leapt, once more with that as something that was done.
 */
export function fitHappened(
  happened: Happened,
  options: SimulationOptions = usualOptions,
  mayLeap = true,
): Fit {
  const parameters = parametersOf(happened);
  const model = new Model(happened, parameters, options);
  const { converged, values: plain } = plainFit(model);
  let values = plain;
  for (let look = 1; ; look++) {
    const slopes = slopesAt(model, values);
    const settlement = settled(model, values, slopes, mayLeap);
    const moved = slopes.rows.map(
      (row, i) => Math.abs(sumOf(row, settlement.mean)) / happened.observations[i]!.sigma,
    );
    // Where readings disagree badly the plain fit may not come to rest; what follows still may.
    const atRest = moved.every((by) => by < FAR);
    if (settlement.leaps.length > 0) {
      const all = [...happened.leaps, ...settlement.leaps];
      const leaps = all.toSorted((a, b) => a.beforeH - b.beforeH);
      const isLeap = leaps.length <= mostLeaps(testsOf(happened));
      return fitHappened({ ...happened, leaps: isLeap ? leaps : [] }, options, isLeap);
    }
    if (happened.leaps.length > 0 && settlement.spread > WIDE) {
      return fitHappened({ ...happened, leaps: [] }, options, false);
    }
    if (look === (converged ? LOOKS : MOST_LOOKS) || atRest) {
      const fit = fitted({ model, values, slopes, settlement, converged: converged || atRest });
      const stray = thereAndBack(fit.leaps);
      const lasting = happened.leaps.filter(
        (_, i) => Math.abs(fit.leaps[i]!.byDkh) > LEAST_LEAP_DKH && !stray.has(i),
      );
      if (lasting.length === happened.leaps.length) return fit;
      return fitHappened({ ...happened, leaps: lasting }, options, false);
    }
    values = withinBounds(parameters, values, settlement.mean);
  }
}

const testsOf = ({ observations }: Happened): number =>
  observations.filter(({ kind }) => kind === 'alkalinity').length;

function settled(
  model: Model,
  values: readonly number[],
  slopes: Slopes,
  mayLeap: boolean,
): Settlement {
  const { observations, endH } = model.happened;
  const expected = model.readings(values);
  const left = observations.map(({ value }, i) => value - expected[i]!);
  return robustly(
    {
      rows: observations.map(({ timeH, kind, sigma }, i) => ({
        ...{ timeH, left: left[i]!, slopes: slopes.rows[i]!, wanders: kind === 'alkalinity' },
        variance: sigma ** 2,
      })),
      priors: beforesOf(model.parameters, values),
      ...{ endH, mayLeap },
      usualUse: usualUseOf(model.course(values).useDkhPerDay),
    },
    firstWeights(left.map((value, i) => value / observations[i]!.sigma)),
  );
}
