import type { Scenario } from '../../../shared/scenario/schema';
import { fullestBottleL, fullestReservoirL, RIM } from '../plan/fullDump';
import { filled } from './filled';
import type { Need } from './needs';

/** The most that may stand in a vessel of what is in it today, and for what reason not more. */
export interface Harmless {
  readonly litres: number;
  /** More of it at once does harm; more of anything runs onto the floor. */
  readonly why: 'harm' | 'rim';
}

/** Whether the top-off brings alkalinity. */
export const carries = ({ topOff }: Scenario): boolean =>
  topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;

/**
 * The most that may stand in a vessel so that all of it at once, at the worst hour, does no harm;
 * undefined where neither what it holds nor what may be needed would. The first day is the worst: what
 * has gone in since then is no longer in the vessel, and corals take of it.
 */
export function harmlessOf(now: Scenario, { pump, hasL, needL }: Need): Harmless | undefined {
  const litres = Math.max(hasL, needL ?? 0);
  if (litres === 0) return undefined;
  if (pump !== undefined) {
    const dosers = now.dosers.map((one, i) => (i === pump ? { ...one, stockL: litres } : one));
    const most = fullestBottleL({ ...now, dosers }, pump);
    return most < litres ? { litres: most, why: 'harm' } : undefined;
  }
  const full = filled(now, litres);
  const rim = fullestReservoirL(full, RIM);
  const harm = carries(now) ? fullestReservoirL(full) : Infinity;
  if (Math.min(rim, harm) >= full.topOff.reservoirL) return undefined;
  return harm < rim ? { litres: harm, why: 'harm' } : { litres: rim, why: 'rim' };
}
