import type { VesselId } from '../../shared/devices/device';
import { indexOf } from '../../shared/species/block';
import { termsOf, type Reaction } from '../../shared/species/reaction';
import { dissolved, type DissolvedId, type PoolId } from '../../shared/species/species';
import type { Books, Term } from './books';

/** The accounts that a reaction moves when it goes on in the water of a vessel. */
export function termsIn(books: Books, vessel: VesselId, reaction: Reaction): Term[] {
  const offset = books.offsetOf(vessel);
  return termsOf(reaction).map(([id, moles]) => ({
    index: id in dissolved ? offset + indexOf[id as DissolvedId] : books.poolIndex(id as PoolId),
    moles,
  }));
}
