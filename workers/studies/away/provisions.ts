import type { Scenario } from '../../../shared/scenario/schema';
import { dumpHolds, fullestReservoirL, RIM, strongestMixGPerL } from '../plan/fullDump';
import { filled } from './filled';
import { covers, type Vessel } from './empties';
import { carries } from './harmless';
import type { Most, Need } from './needs';
import type { Provision } from './provided';

/** What provisions are made from. */
export interface Stock {
  readonly now: Scenario;
  /** For all days away; the reservoir first. */
  readonly vessels: readonly Vessel[];
  /** The same until somebody comes; undefined where nobody does. */
  readonly untilVisit: { readonly everyDays: number; readonly needs: readonly Most[] } | undefined;
  /** Vessels that may be fuller than is harmless, where nothing else lasts. */
  readonly mayHarm: 'none' | 'bottles' | 'all';
}

/** A mix weaker than this share of today's is plain water. */
const LEAST_STRENGTH = 0.05;

const harmlessL = ({ harmless }: Vessel): number => harmless?.litres ?? Infinity;

/** What may be needed of a vessel, or what it holds where nobody can tell. */
const neededL = ({ needL, hasL }: Need): number => (needL === 0 ? hasL : (needL ?? hasL));

/** What lasts until somebody comes, or else for all days: where that does harm, no more of it than has to be. */
const leastL = (vessel: Vessel, visit: Most | undefined): number => visit?.needL ?? neededL(vessel);

/** Each bottle as full as may be needed, and no fuller than is harmless; filled up on visits where it then lasts. */
function withBottles({ now, vessels, untilVisit, mayHarm }: Stock) {
  const litresOf = new Map<number, number>();
  const refilledPumps: number[] = [];
  vessels.forEach((vessel, i) => {
    const { pump } = vessel;
    if (pump === undefined) return;
    const visit = untilVisit?.needs[i];
    const most =
      mayHarm === 'none' ? harmlessL(vessel) : Math.max(harmlessL(vessel), leastL(vessel, visit));
    const isRefilled = visit !== undefined && !covers(most, vessel) && covers(most, visit);
    if (isRefilled) refilledPumps.push(pump);
    litresOf.set(pump, Math.min(most, neededL(vessel)));
  });
  const dosers = now.dosers.map((one, i) => {
    const stockL = litresOf.get(i) ?? one.stockL;
    // A bottle that is empty within the hour is as good as none, and a run would put in new ones all day.
    const isNone = stockL * 1000 < one.mlPerDay / 24;
    return { ...one, stockL, mlPerDay: isNone ? 0 : one.mlPerDay };
  });
  return { stocked: { ...now, dosers }, refilledPumps };
}

/**
 * Ways to leave reservoir and bottles, the smallest change first: as full as may be needed, never fuller
 * than is harmless. Visits fill up what does not last; else the reservoir stands for all days, of a
 * weaker mix where so much of today's would do harm, or of plain water.
 */
export function* provisionsOf(stock: Stock): Generator<Provision> {
  const { vessels, untilVisit, mayHarm } = stock;
  const { stocked, refilledPumps } = withBottles(stock);
  const [reservoir] = vessels as [Vessel];
  const { topOff } = stocked;
  const most = harmlessL(reservoir);
  const needL = neededL(reservoir);
  const provision = (
    kind: Provision['kind'],
    scenario: Scenario,
    refillEveryDays = 0,
  ): Provision => ({ kind, scenario, refillEveryDays, refilledPumps });
  const { harmless } = reservoir;
  const mayBeFuller = mayHarm === 'all' && harmless?.why === 'harm';
  const visit = untilVisit?.needs[0];
  const atRimL = (litres: number) => fullestReservoirL(filled(stocked, litres), RIM);
  const onVisitsL = mayBeFuller && visit ? Math.max(most, atRimL(leastL(reservoir, visit))) : most;
  const held = Math.min(onVisitsL, topOff.reservoirL);
  if (visit && !covers(held, reservoir) && covers(held, visit)) {
    const full = filled(stocked, Math.min(held, needL));
    yield provision('toppedUp', full, untilVisit.everyDays);
    if (carries(stocked)) yield provision('mixed', full, untilVisit.everyDays);
  }
  const upToRim = (full: Scenario) => Math.min(needL, fullestReservoirL(full, RIM));
  const full = filled(stocked, needL);
  const mostNow = mayBeFuller ? upToRim(full) : most;
  const isKnown = reservoir.needL !== undefined;
  const litres = Math.min(needL, mostNow);
  // What may not hold anything harmless stands empty only where there is nothing else to leave in it.
  if (litres > 0 || needL === 0 || (topOff.reservoirL > 0 && !carries(stocked))) {
    yield provision('filled', filled(stocked, litres));
  }
  if (
    carries(stocked) &&
    harmless?.why === 'harm' &&
    needL > most &&
    isKnown &&
    dumpHolds(full, RIM)
  ) {
    const gramsPerL = strongestMixGPerL(full);
    if (gramsPerL >= LEAST_STRENGTH * topOff.gramsPerL) {
      yield provision('thinner', filled(stocked, needL, gramsPerL));
    }
  }
  if (needL > 0 && (carries(stocked) || topOff.reservoirL === 0)) {
    yield provision('plain', filled(stocked, upToRim(filled(stocked, needL, 0)), 0));
  }
}
