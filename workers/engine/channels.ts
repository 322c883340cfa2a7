import type { BoundProcess, ProcessKind, Start } from '../../shared/processes/process';
import { indexOf } from '../../shared/species/block';
import { oxygenOf, type OxygenDemand } from '../../shared/species/oxygenDemand';
import { assertBalanced } from '../../shared/species/reaction';
import { poolsWith, type PoolRole } from '../../shared/species/species';
import type { Books, Term } from './books';
import { termsIn } from './termsIn';

/** A process made ready for this tank. */
export interface Channel {
  readonly id: string;
  readonly row: number;
  readonly terms: readonly Term[];
  /** The terms that fall in the tank, which the integrator needs. */
  readonly tankTerms: readonly Term[];
  /** mol of oxygen that a mole of it gives to the tank (+) or takes (−). */
  readonly oxygenMol: number;
  readonly process: BoundProcess;
  /** The channel that it follows; -1 where there is none. */
  readonly lead: number;
}

/** A process of this tank, as its kind binds it. */
export interface Running {
  readonly kind: ProcessKind;
  readonly process: BoundProcess;
}

/** The processes of a tank: those that follow come after those that lead. */
export function runningIn(start: Start, registry: readonly ProcessKind[]): readonly Running[] {
  const running = registry.flatMap((kind) => {
    const process = kind.bind(start);
    return process === null ? [] : [{ kind, process }];
  });
  const leads = running.filter(({ kind }) => kind.follows === undefined);
  return [...leads, ...running.filter(({ kind }) => kind.follows !== undefined)];
}

/** Throws a RangeError with a table when a process's reaction does not balance. */
export const channelsOf = (
  running: readonly Running[],
  books: Books,
  demand: OxygenDemand,
): Channel[] =>
  running.map(({ kind: { id, follows }, process }, row) => {
    const { reaction } = process;
    assertBalanced(id, reaction);
    const named = termsIn(books, 'tank', reaction);
    const tankTerms = named.filter(({ index }) => index < books.tank.length);
    const oxygenMol = oxygenOf(reaction, demand);
    const terms = oxygenMol === 0 ? named : [...named, { index: indexOf.O2, moles: oxygenMol }];
    const lead = running.findIndex(({ kind }) => kind.id === follows);
    return { id, row, terms, tankTerms, oxygenMol, process, lead };
  });

/** Where a pool of a role is moved: by which channel, and by how many moles for each of its own. */
export interface Moving {
  readonly channel: number;
  readonly account: number;
  readonly moles: number;
}

/** Every reaction that moves a pool of this role, whatever either is called. */
export function movingPools(
  channels: readonly Channel[],
  books: Books,
  role: PoolRole,
): readonly Moving[] {
  const accounts = poolsWith(role).map((id) => books.poolIndex(id));
  return channels.flatMap(({ terms }, channel) =>
    terms
      .filter(({ index }) => accounts.includes(index))
      .map(({ index: account, moles }) => ({ channel, account, moles })),
  );
}
