import type { LedgerRow } from '../../shared/trace/trace';
import { say } from '../../shared/words/ledger';

const names: Readonly<Record<string, string>> = say;

/** What moved alkalinity, in the reader's words; a pump is called what its keeper calls it. */
export const rowName = ({ id, label }: Pick<LedgerRow, 'id' | 'label'>): string =>
  Object.hasOwn(names, id) ? names[id]! : label;
