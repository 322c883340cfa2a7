import { say } from '../words/ledger';
import type { LedgerRow } from './trace';

/** What comes with another mix that is filled in when a run goes on. */
export const refillRow: LedgerRow = { id: 'refill', label: say.refill, role: 'exchange' };
