import { toFigures } from '../../shared/units/digits';
import type { QuantityMeta } from '../../shared/scenario/quantity';
import { conversionOf, usualDisplay, type DisplayUnits } from '../../shared/units/display';
import { inputText, withDecimal } from '../../shared/units/format';
import { parseQuantity } from '../../shared/units/parse';
import { typedNumber } from '../../shared/units/typedNumber';
import type { Read } from './draft.svelte';
import { say } from '../../shared/words/settings';
import { preferences } from '../store/preferences.svelte';

/** What a reader needs to know of a number. */
export type Readable = Pick<QuantityMeta, 'unit' | 'min' | 'max' | 'step' | 'mistake'>;

/** Why a value, in our own unit, cannot stand in a field; nothing when it can. */
function complaintAbout(
  value: number,
  label: string,
  { unit, min, max, step, mistake }: Readable,
  display: DisplayUnits,
): string {
  if (value >= min && value <= max) return '';
  const meant = mistake?.(value);
  if (meant) return `${meant}.`;
  const { out, unit: shown } = conversionOf(unit, display);
  const [least, most] = [min, max].map((end) => inputText(end, step, unit, display));
  const number = withDecimal(String(toFigures(out(value), 6)), display);
  return say.outside(label, number, say.range(least!, most!, shown));
}

/**
 * What a keeper typed into a field, in our own unit. A bare number is meant in the unit on the
 * screen; any other unit may be named.
 */
export async function readTyped(
  typed: string,
  label: string,
  quantity: Readable,
  display: DisplayUnits,
): Promise<Read<number>> {
  const plain = display.decimal === 'comma' ? typed.replace(',', '.') : typed;
  const parsed = await parseQuantity(plain, quantity.unit);
  if (!parsed.ok) return parsed;
  const { back, unit } = conversionOf(quantity.unit, display);
  const value = typedNumber(plain).unit === '' ? back(parsed.value) : parsed.value;
  if (!Number.isFinite(value)) return { ok: false, message: say.notInUnit(typed, unit) };
  const message = complaintAbout(value, label, quantity, display);
  return message === '' ? { ok: true, value } : { ok: false, message };
}

/** The same in our own unit, whatever is on the screen elsewhere; `inForce` says what stays. */
export async function readPlain(
  typed: string,
  label: string,
  quantity: Readable,
  inForce: string,
): Promise<Read<number>> {
  const { decimal } = preferences.now;
  const read = await readTyped(typed, label, quantity, { ...usualDisplay, decimal });
  return read.ok ? read : { ok: false, message: `${read.message} ${inForce}`.trim() };
}
