import type { Plant } from '../../shared/devices/device';
import { WATER } from '../../shared/species/block';
import { assertBalanced } from '../../shared/species/reaction';
import type { Plan } from './compile';
import type { TankView } from './tankView';
import { termsIn } from './termsIn';

/** What devices and events may do to a tank: nothing here goes round the books. */
export function plantDoor(plan: Plan, view: TankView): Plant {
  const { books, ledger, refillRow } = plan;
  const rowOf = (reason: string): number => {
    const row = ledger.findIndex(({ id }) => id === reason);
    return row >= 0 ? row : refillRow;
  };
  return {
    setLight: (level, slopePerH) => view.setLight(level, slopePerH),
    setPower: (on) => (view.powered = on),
    setAeration: (kLaPerH) => (view.kLaPerH = kLaPerH),
    waterKg: (vessel) => books.vessel(vessel)[WATER]!,
    contents: (vessel) => books.vessel(vessel),
    transfer: (reason, from, to, block) =>
      books.transfer(rowOf(reason), books.offsetOf(from), books.offsetOf(to), block),
    react(vessel, reaction, mol) {
      assertBalanced(vessel, reaction);
      books.react(refillRow, termsIn(books, vessel, reaction), mol);
    },
    inPool: (pool) => books.pool(pool),
  };
}
