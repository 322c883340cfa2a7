import type { Scenario } from '../../../shared/scenario/schema';
import { stateAfter } from '../../engine/run';
import { settle, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import { withUse } from './useEnds';

/**
 * The water as it stands, were its use another. A use is what is taken at rest, and a tank whose corals
 * take less rests with less CO2 at a higher saturation: its use refers to that. Held to the saturation of
 * the use itself, growth would make up for half of what the use is thought to be off by.
 */
export function standingAt(
  now: Scenario,
  options: SimulationOptions,
): (useDkhPerDay: number) => TankState {
  const states = new Map<number, TankState>();
  const { useDkhPerDay: own } = now.corals;
  const { omegaReference } = now.start;
  const bare = { ...now, start: { ...now.start, omegaReference: 0 } };
  let here: Settled | undefined;

  /** Where either has no rest there is nothing to tell them apart by. */
  function referenceAt(useDkhPerDay: number): number {
    here ??= settle(bare, options);
    const there = settle(withUse(bare, useDkhPerDay), options, here);
    return here.settled && there.settled
      ? Math.max(LEAST_OMEGA, omegaReference + there.omegaReference - here.omegaReference)
      : omegaReference;
  }

  return (useDkhPerDay) => {
    const known = states.get(useDkhPerDay);
    if (known) return known;
    const tank =
      useDkhPerDay === own
        ? now
        : withUse(
            { ...now, start: { ...now.start, omegaReference: referenceAt(useDkhPerDay) } },
            useDkhPerDay,
          );
    const state = stateAfter({ ...tank, days: 0 }, options);
    states.set(useDkhPerDay, state);
    return state;
  };
}

/** A reference of 0 would ask for the tank's own. */
const LEAST_OMEGA = 0.01;
