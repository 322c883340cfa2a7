import type { Scenario } from '../../../shared/scenario/schema';
import type { RanUntil } from '../fit/turnedAt';

/** Whether all that brought something goes on, at whatever dose; of a plan that brought nothing, nothing does. */
function goesOn(before: Scenario, after: Scenario): boolean {
  const { dosers, topOff, calciumReactor } = before;
  const mixes = topOff.additive !== 'none';
  const drips = calciumReactor.dripLPerH > 0;
  const named = after.dosers.map(({ name }) => name);
  return (
    (dosers.length > 0 || mixes || drips) &&
    dosers.every(({ name }) => named.includes(name)) &&
    (!mixes || after.topOff.additive === topOff.additive) &&
    (!drips || after.calciumReactor.dripLPerH > 0)
  );
}

/**
 * When a plan last took the place of what ran, local time: of what was poured in by hand, too. A pump or
 * a mix that is turned leaves the hand as it is. Undefined where none did.
 */
export const replacedAt = (ran: readonly RanUntil[], plan: Scenario): string | undefined =>
  ran.findLast((one, i) => !goesOn(one.plan, ran[i + 1]?.plan ?? plan))?.until;
