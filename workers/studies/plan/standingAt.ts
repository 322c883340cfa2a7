import type { Scenario } from '../../../shared/scenario/schema';
import { stateAfter } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import { atRest } from './atRest';

/** The water of a tank with a reference as it stands, were its use another. */
export function standingAt(
  now: Scenario,
  options: SimulationOptions,
): (useDkhPerDay: number) => TankState {
  const states = new Map<number, TankState>();
  const at = atRest(now, options);
  return (useDkhPerDay) => {
    const isOwn = useDkhPerDay === now.corals.useDkhPerDay;
    const tank = isOwn ? now : at(now, useDkhPerDay);
    const state = states.get(useDkhPerDay) ?? stateAfter({ ...tank, days: 0 }, options);
    states.set(useDkhPerDay, state);
    return state;
  };
}
