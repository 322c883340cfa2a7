import { say } from '../../../shared/words/plans';
import type { Offer } from '../../ask/outcome';

const { ways: told } = say;

/** What the two new pumps of a plan are called. */
export const pairNames = { carbonate: told.partOne, calcium: told.partTwo };

/** The way in which a plan holds the target. */
export function wayTitle({ id, otherSalt }: Pick<Offer, 'id' | 'otherSalt'>): string {
  if (id !== 'waterChanges') return told[id];
  return otherSalt ? told.changesOtherSalt : told.changesAlone;
}
