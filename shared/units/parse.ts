import type { ParsedQuantity } from './parsedQuantity';

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
  if (text.trim() === '')
    return refuse(`Nothing is typed here. Type a number${unit ? ` in ${unit}` : ''}.`);
  const clock = unit === 'h' ? CLOCK.exec(text) : null;
  if (clock) return { ok: true, value: Number(clock[1]) + Number(clock[2]) / 60 };
  const match = NUMBER.exec(text);
  if (!match) {
    return refuse(
      `“${text.trim()}” is not a number${unit ? ` in ${unit}` : ''}. Type one like 8.5 or 8,5, with a unit if you like.`,
    );
  }
  const [, digits = '', typedUnit = ''] = match;
  if (AMBIGUOUS.test(digits)) {
    const [whole] = digits.split(',');
    return refuse(
      `“${digits}” can be ${whole} or ${digits.replace(',', '')}. Type ${whole} or ${digits.replace(',', '')}.`,
    );
  }
  const number = Number(digits.replace(',', '.').replace('−', '-'));
  if (typedUnit === '' || plain(typedUnit) === plain(unit)) return { ok: true, value: number };
  const { convert } = await import('./dimensional');
  return convert(number, typedUnit, unit);
}
