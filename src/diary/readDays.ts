import { parseQuantity } from '../../shared/units/parse';
import type { Read } from '../fields/draft.svelte';
import { say } from '../../shared/words/away';

/** Whole days between two ends as they were typed, or the sentence that says what was expected. */
export async function readDays(text: string, min: number, max: number): Promise<Read<number>> {
  const parsed = await parseQuantity(text, 'days');
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const isDays = value >= min && value <= max && Number.isInteger(value);
  const message = say.panel.outside(text, String(min), String(max));
  return isDays ? { ok: true, value } : { ok: false, message };
}
