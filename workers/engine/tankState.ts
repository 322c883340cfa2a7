import type { Memory, VesselId, VesselRole } from '../../shared/devices/device';
import type { Scenario } from '../../shared/scenario/schema';
import type { LedgerRow } from '../../shared/trace/trace';
import type { ClosureStart } from './closures';
import type { Recent } from './past';
import type { Settled } from './settle';
import type { Simulation } from './simulation';

/** What an account holds, and what rounding has kept from it. */
export interface Held {
  readonly amounts: Float64Array;
  readonly lost: Float64Array;
}

/**
 * A tank at a moment of its run, whole: another run goes on from here, under the same plan or
 * another. It is plain values, never changed once taken.
 */
export interface TankState {
  /** The plan that led here. */
  readonly scenario: Scenario;
  /** Hours since the start of the first run: days, faults and growth of what goes on count from there. */
  readonly timeH: number;
  /** mol of every species and kg of water in the tank, the reservoir, the bottles, and beyond. */
  readonly vessels: readonly ({ readonly id: VesselId; readonly role?: VesselRole } & Held)[];
  /** mol in skeletons, air, food and sediment, in the order of `poolIds`. */
  readonly pools: Held;
  readonly ledger: readonly { readonly row: LedgerRow; readonly eq: number }[];
  /** What the first run settled on: the law of growth goes on from it. */
  readonly start: Settled;
  readonly toppedOffKg: number;
  /** What each device kept in mind. */
  readonly memories: Readonly<Record<string, readonly Memory[]>>;
  readonly tryH: number;
  /** The last day, against which what moves too fast is judged. */
  readonly recent: Recent;
  readonly closure: ClosureStart;
}

/** What a simulation knows of its own state; `TrialRun` adds what it watches. */
export function simulatedState(
  simulation: Simulation,
): Omit<TankState, 'start' | 'recent' | 'closure'> {
  const { plan, timeH, toppedOffKg } = simulation;
  const { books, devices, ledger, scenario } = plan;
  const held = (from: number, to: number): Held => ({
    amounts: books.amounts.slice(from, to),
    lost: books.lost.slice(from, to),
  });
  return {
    ...{ scenario, timeH, toppedOffKg, tryH: simulation.tryH },
    vessels: books.vesselIds.map((id) => {
      const offset = books.offsetOf(id);
      const role = plan.reservoirs.includes(id) ? { role: 'reservoir' as const } : {};
      return { id, ...role, ...held(offset, offset + books.tank.length) };
    }),
    pools: held(books.poolOffset, books.amounts.length),
    ledger: ledger.map((row, i) => ({ row, eq: books.ledgerEq[i]! })),
    memories: Object.fromEntries(
      devices.map(({ id, memory }) => [id, memory.map((part) => ({ ...part }))]),
    ),
  };
}
