import type { Scenario } from '../../../shared/scenario/schema';
import { settle, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { withUse } from './useEnds';

/** A reference of 0 would ask for the tank's own. */
const LEAST_OMEGA = 0.01;

/**
 * The saturation that growth would refer to in a tank with a reference, were it another in something.
 * A use is what is taken at rest: where corals take less, or less CO2 comes in, a tank rests at a higher
 * saturation, and its use refers to that. Held to the saturation of the tank itself, growth would make
 * up for half of what its use is thought to be off by.
 */
export function referenceOf(
  now: Scenario,
  options: SimulationOptions,
): (other: Scenario) => number {
  const { omegaReference } = now.start;
  const bare = (tank: Scenario) => ({ ...tank, start: { ...tank.start, omegaReference: 0 } });
  let here: Settled | undefined;
  return (other) => {
    here ??= settle(bare(now), options);
    const there = settle(bare(other), options, here);
    // Where either has no rest there is nothing to tell them apart by.
    return here.settled && there.settled
      ? Math.max(LEAST_OMEGA, omegaReference + there.omegaReference - here.omegaReference)
      : omegaReference;
  };
}

/** The same of a tank with another use, dKH/day. */
export type ReferenceAt = (useDkhPerDay: number) => number;

export function referenceAt(now: Scenario, options: SimulationOptions): ReferenceAt {
  const found = new Map([[now.corals.useDkhPerDay, now.start.omegaReference]]);
  const soughtOf = referenceOf(now, options);
  return (useDkhPerDay) => {
    const omega = found.get(useDkhPerDay) ?? soughtOf(withUse(now, useDkhPerDay));
    found.set(useDkhPerDay, omega);
    return omega;
  };
}
