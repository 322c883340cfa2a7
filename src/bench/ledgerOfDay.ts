import { conversionOf, usualDisplay, type DisplayUnits } from '../../shared/units/display';
import { numberText } from '../../shared/units/format';
import { say as words } from '../../shared/words/folds';
import { rowName } from '../say/rowName';
import { readColumn, readLedger, type Trace } from '../../shared/trace/trace';

const say = words.ledger;

export interface LedgerEntry {
  readonly id: string;
  readonly label: string;
  /** dKH of the start volume, over the stretch: brought (+) or taken (−). */
  readonly dkh: number;
}

export interface LedgerOfDay {
  readonly fromH: number;
  readonly toH: number;
  readonly startDkh: number;
  readonly endDkh: number;
  readonly entries: readonly LedgerEntry[];
}

/** Rows too small to see are left out; what they sum to stays in the last entry. */
const LEAST_DKH = 0.0005;

/**
 * Where alkalinity came from and went in the day around an hour. The rows are the engine's own
 * bookings; the last one is what less or more water does to the reading.
 */
export function ledgerOfDay(trace: Trace, cursorH: number): LedgerOfDay {
  const last = trace.rows - 1;
  const day = Math.max(0, Math.ceil(Math.min(cursorH, last) / 24) - 1);
  const [fromH, toH] = [day * 24, Math.min(last, (day + 1) * 24)];
  const alkalinity = readColumn(trace, 'alkalinity_dkh');
  const [startDkh, endDkh] = [alkalinity[fromH]!, alkalinity[toH]!];
  const booked = trace.ledger.map((row) => {
    const { id } = row;
    const sum = readLedger(trace, id);
    return { id, label: rowName(row), dkh: sum[toH]! - sum[fromH]! };
  });
  const entries = booked.filter(({ dkh }) => Math.abs(dkh) >= LEAST_DKH);
  const rest = endDkh - startDkh - entries.reduce((sum, { dkh }) => sum + dkh, 0);
  const water = { id: 'volume', label: say.volume, dkh: rest };
  return {
    fromH,
    toH,
    startDkh,
    endDkh,
    entries: Math.abs(rest) >= LEAST_DKH ? [...entries, water] : entries,
  };
}

/** The day in a sentence: what took, what brought, what is left. */
export function ledgerSentence(
  { entries, startDkh, endDkh }: LedgerOfDay,
  display: DisplayUnits = usualDisplay,
): string {
  const amount = (dkh: number) => numberText(Math.abs(dkh), 2, 'dKH', display);
  const list = (sign: number) =>
    entries
      .filter(({ dkh }) => dkh * sign > 0.005)
      .sort((a, b) => Math.abs(b.dkh) - Math.abs(a.dkh))
      .map(({ label, dkh }) => `${label} ${amount(dkh)}`)
      .join(', ');
  const change = endDkh - startDkh;
  const took = list(-1);
  const brought = list(1);
  const parts = [took && say.took(took), brought && say.brought(brought)].filter(Boolean);
  const moved = `${amount(change)} ${conversionOf('dKH', display).unit}`;
  const end =
    Math.abs(change) < 0.005 ? say.asBefore : change < 0 ? say.falls(moved) : say.rises(moved);
  return `${parts.length > 0 ? parts.join('; ') : say.nothing}; ${end}.`;
}
