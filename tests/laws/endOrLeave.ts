import { LeftRange } from '../../workers/engine/leftRange';
import type { Simulation } from '../../workers/engine/simulation';

/** Goes to a moment, or to where a tank that leaks or dries up leaves the chemistry; says which. */
export function endOrLeave(simulation: Simulation, endH: number): 'end' | 'left' {
  try {
    simulation.advanceTo(endH);
    return 'end';
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
    return 'left';
  }
}
