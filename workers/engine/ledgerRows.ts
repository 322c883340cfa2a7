import type { Pipe } from '../../shared/devices/device';
import { eventKinds } from '../../shared/events/registry';
import { refillRow } from '../../shared/trace/refillRow';
import type { LedgerRow } from '../../shared/trace/trace';
import type { Running } from './channels';

/**
 * The rows of a ledger: processes first, then pipes and events, then what an earlier plan booked and
 * this one does not; the row of what fills vessels is last.
 */
export function ledgerRows(
  running: readonly Running[],
  pipes: readonly Pipe[],
  before: readonly { readonly row: LedgerRow }[],
): LedgerRow[] {
  const rows: LedgerRow[] = [
    ...running.map(({ kind: { id, label, role } }) => ({ id, label, role })),
    ...pipes.map(({ id, label, role, pump }) => ({
      ...{ id, label, role },
      ...(pump !== undefined && { pump }),
    })),
    ...eventKinds.map(({ id, label, role }) => ({ id, label, role })),
  ];
  const named = new Set([...rows, refillRow].map(({ id }) => id));
  return [...rows, ...before.map(({ row }) => row).filter(({ id }) => !named.has(id)), refillRow];
}
