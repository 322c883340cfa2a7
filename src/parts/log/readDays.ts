import { parseQuantity } from '../../../shared/units/parse';
import { say } from '../../../shared/words/away';

/** Whole days between two ends as they were typed, or the sentence that says what was expected. */
export async function readDays(text: string, min: number, max: number): Promise<number | string> {
  const parsed = await parseQuantity(text, 'days');
  if (!parsed.ok) return parsed.message;
  const { value } = parsed;
  const isDays = value >= min && value <= max && Number.isInteger(value);
  return isDays ? value : say.panel.outside(text, String(min), String(max));
}
