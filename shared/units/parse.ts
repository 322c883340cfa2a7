import { say as problems } from '../words/problems';
import { spokenUnit } from './spokenUnit';
import type { ParsedQuantity } from './parsedQuantity';
import { withoutAbout } from './typedNumber';

const say = problems.typed;

const NUMBER = /^\s*([-+−]?\d+(?:[.,]\d+)?|[-+−]?[.,]\d+)\s*(.*?)\s*$/u;
/** "1,000": a thousand in one country, one in another. */
const AMBIGUOUS = /^[-+−]?\d{1,3},\d{3}$/u;

const refuse = (message: string): ParsedQuantity => ({ ok: false, message });

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('²', '2')
    .replaceAll(' ', '')
    .replaceAll('liters', 'l')
    .replaceAll('litres', 'l');

/** "21:30", for a field in hours. */
const CLOCK = /^\s*(\d{1,2}):([0-5]\d)\s*$/u;

/**
 * Reads what a person typed into a field that is kept in `unit`: a bare number, a number with that
 * unit, or any other unit of the same kind ("12 gal"). A decimal comma is read as such.
 */
export async function parseQuantity(text: string, unit: string): Promise<ParsedQuantity> {
  const spoken = spokenUnit(unit);
  if (text.trim() === '') return refuse(unit ? say.nothingIn(spoken) : say.nothing);
  const clock = unit === 'h' ? CLOCK.exec(text) : null;
  if (clock) return { ok: true, value: Number(clock[1]) + Number(clock[2]) / 60 };
  const match = NUMBER.exec(withoutAbout(text));
  if (!match) {
    return refuse(unit ? say.noNumberIn(text.trim(), spoken) : say.noNumber(text.trim()));
  }
  const [, digits = '', typedUnit = ''] = match;
  if (AMBIGUOUS.test(digits)) {
    const [whole] = digits.split(',');
    return refuse(say.ambiguous(digits, whole!, digits.replace(',', '')));
  }
  const number = Number(digits.replace(',', '.').replace('−', '-'));
  if (['', plain(unit), plain(spoken)].includes(plain(typedUnit)))
    return { ok: true, value: number };
  const { convert } = await import('./dimensional');
  return convert(number, typedUnit, unit);
}
