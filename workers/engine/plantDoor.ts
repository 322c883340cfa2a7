import type { Plant, VesselId } from '../../shared/devices/device';
import { WATER } from '../../shared/species/block';
import { assertBalanced, type Reaction } from '../../shared/species/reaction';
import type { Term } from './books';
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
  // Weighed and looked up once: a reservoir is looked after at every act.
  const known = new Map<Reaction, Map<VesselId, readonly Term[]>>();
  const termsOf = (vessel: VesselId, reaction: Reaction): readonly Term[] => {
    const inVessels = known.get(reaction) ?? new Map<VesselId, readonly Term[]>();
    const terms = inVessels.get(vessel) ?? balanced(vessel, reaction);
    known.set(reaction, inVessels.set(vessel, terms));
    return terms;
  };
  const balanced = (vessel: VesselId, reaction: Reaction): readonly Term[] => {
    assertBalanced(vessel, reaction);
    return termsIn(books, vessel, reaction);
  };
  return {
    setLight: (level, slopePerH) => view.setLight(level, slopePerH),
    setPower: (on) => view.setPower(on),
    setAeration: (kLaPerH) => view.setAeration(kLaPerH),
    waterKg: (vessel) => books.vessel(vessel)[WATER]!,
    contents: (vessel) => books.vessel(vessel),
    transfer: (reason, from, to, block) =>
      books.transfer(rowOf(reason), books.offsetOf(from), books.offsetOf(to), block),
    react: (vessel, reaction, mol) => books.react(refillRow, termsOf(vessel, reaction), mol),
    inPool: (pool) => books.pool(pool),
  };
}
