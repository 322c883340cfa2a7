import type { Scenario } from '../../../shared/scenario/schema';
import { settle, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { withUse } from './useEnds';

/** A reference of 0 would ask for the tank's own. */
const LEAST_OMEGA = 0.01;

const referringTo = (scenario: Scenario, omegaReference: number): Scenario => ({
  ...scenario,
  start: { ...scenario.start, omegaReference },
});

/**
 * The saturation that growth would refer to in a tank with a reference, were it another in something.
 * A use is what is taken at rest: where corals take less, or less CO2 comes in, a tank rests at a higher
 * saturation, and its use refers to that. Held to the saturation of the tank itself, growth would make
 * up for half of what its use is thought to be off by.
 */
function referenceOf(now: Scenario, options: SimulationOptions): (other: Scenario) => number {
  const { omegaReference } = now.start;
  let here: Settled | undefined;
  return (other) => {
    here ??= settle(referringTo(now, 0), options);
    const there = settle(referringTo(other, 0), options, here);
    // Where either has no rest there is nothing to tell them apart by.
    return here.settled && there.settled
      ? Math.max(LEAST_OMEGA, omegaReference + there.omegaReference - here.omegaReference)
      : omegaReference;
  };
}

/** A tank that is another in something than one with a reference, and rests where it then would. */
export function restingItself(
  now: Scenario,
  options: SimulationOptions,
): (other: Scenario) => Scenario {
  const sought = referenceOf(now, options);
  return (other) => referringTo(other, sought(other));
}

/** A plan at another use, dKH/day, of a tank with a reference that rests where it then would. */
export function atRest(
  now: Scenario,
  options: SimulationOptions,
): (plan: Scenario, useDkhPerDay: number) => Scenario {
  const found = new Map([[now.corals.useDkhPerDay, now.start.omegaReference]]);
  const sought = referenceOf(now, options);
  return (plan, useDkhPerDay) => {
    const omega = found.get(useDkhPerDay) ?? sought(withUse(now, useDkhPerDay));
    found.set(useDkhPerDay, omega);
    return withUse(referringTo(plan, omega), useDkhPerDay);
  };
}
