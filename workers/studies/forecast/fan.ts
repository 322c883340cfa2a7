import type { TankEvent } from '../../../shared/events/event';
import type { Happened } from '../fit/asItHappened';
import { plannedEvents } from '../../engine/compile';
import type { Fit } from '../fit/fit';
import { varianceOf } from '../fit/leastSquares';
import { Model } from '../fit/model';
import type { Parameter } from '../fit/parameters';
import type { SimulationOptions } from '../../engine/simulation';

/** The fitted tank ahead, and how each fitted number moves it. */
export interface Fan {
  /** Hours since the start of the log. */
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  /** Change of dKH for one unit of each parameter, at each time. */
  readonly slopes: readonly (readonly number[])[];
  /** One standard error of the water, without the noise of a test, dKH. */
  readonly spreadDkh: readonly number[];
}

const EVERY_H = 3;

/** What the plan goes on to do once the log has ended. */
function later(happened: Happened, hours: number): TankEvent[] {
  const planned = { ...happened.scenario, days: hours / 24, additions: [] };
  return plannedEvents(planned).filter(({ timeH }) => timeH > happened.endH);
}

/**
 * The fan comes from the covariance through the engine, to first order: one run for the fitted
 * values and one for each step aside. tests/log/forecast holds it against whole draws.
 */
export function fanOf(
  happened: Happened,
  parameters: readonly Parameter[],
  { estimates, covariance }: Fit,
  days: number,
  options: SimulationOptions,
): Fan {
  const model = new Model(happened, parameters, options);
  const endH = happened.endH + days * 24;
  const timesH = Array.from({ length: Math.floor(endH / EVERY_H) + 1 }, (_, i) => i * EVERY_H);
  const planned = later(happened, endH);
  const values = estimates.map(({ value }) => value);
  const dkh = [...model.alkalinityAt(values, timesH, planned)];
  const columns = parameters.map(({ step, max, lot }, i) => {
    if (lot !== undefined) return dkh.map(() => 0);
    const move = values[i]! + step > max ? -step : step;
    const moved = model.alkalinityAt(values.with(i, values[i]! + move), timesH, planned);
    return dkh.map((value, k) => (moved[k]! - value) / move);
  });
  const slopes = timesH.map((_, k) => columns.map((column) => column[k]!));
  return {
    timesH,
    dkh,
    slopes,
    spreadDkh: slopes.map((row) => Math.sqrt(varianceOf(row, covariance))),
  };
}
