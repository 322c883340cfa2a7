import type { HandAir } from '../../../shared/faults/handAir';
import { possibleFaults } from '../../../shared/faults/possibleFaults';
import type { Scenario } from '../../../shared/scenario/schema';
import type { OnTheWall } from '../../../shared/verdict/bought';
import type { SimulationOptions } from '../../engine/simulation';
import { actsBuy } from './actsBuy';
import { howLong } from './howLong';

/** A failure is followed for so long, days; a trial has room for the day before it. */
export const DAYS = 4;

const soonest = ({ first }: OnTheWall): number => first?.reach.soonestH ?? Infinity;

/** Every failure that a tank can have, with how long there is; of its pumps, the worst one. */
export async function wallSheet(
  plan: Scenario,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<OnTheWall[] | undefined> {
  const sheet: OnTheWall[] = [];
  for (const fault of possibleFaults(plan)) {
    const pumps = fault.kind.startsWith('doser') ? plan.dosers.map((_, i) => i + 1) : [fault.pump];
    let worst: OnTheWall | undefined;
    for (const pump of pumps) {
      const own = { ...fault, pump };
      const drill: Scenario = { ...plan, days: DAYS, faults: [own] };
      const isCut = fault.kind === 'powerCut';
      const bought = isCut ? await actsBuy(drill, handAir, options, pause) : undefined;
      const left = isCut ? bought : await howLong(drill, handAir, options, pause);
      if (!left) return undefined;
      const found: OnTheWall = {
        fault: own,
        first: left.first,
        followedH: 'fromH' in left ? DAYS * 24 - left.fromH : left.followedH,
        air: bought?.acts.filter(({ act }) => act === 'batteryAir' || act === 'scoop') ?? [],
      };
      if (!worst || soonest(found) < soonest(worst)) worst = found;
    }
    if (worst) sheet.push(worst);
  }
  return sheet;
}
