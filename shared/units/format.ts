import { fixed, toFigures } from './digits';
import { conversionOf, usualDisplay, type DisplayUnits } from './display';

/** Decimals that a step of an input calls for: 0.05 → 2. */
export const decimalsOf = (step: number): number =>
  step >= 1 ? 0 : Math.min(4, Math.ceil(-Math.log10(step) - 1e-9));

/** The reader's decimal sign in a number that is written already. */
export const withDecimal = (text: string, { decimal }: DisplayUnits): string =>
  decimal === 'comma' ? text.replace('.', ',') : text;

/** A number as it stands in an input: no more decimals than it needs, at least those of a step. */
export function inputText(value: number, step: number, unit = '', display = usualDisplay): string {
  const { out, moreDigits } = conversionOf(unit, display);
  const shown = out(value);
  const decimals = Math.max(0, decimalsOf(step) + moreDigits);
  const written = fixed(shown, decimals);
  const whole =
    moreDigits !== 0 || Math.abs(Number(written) - shown) < 1e-9 * Math.max(1, Math.abs(shown));
  return withDecimal(whole ? written : String(toFigures(shown, 6)), display);
}

/** A value of ours as the reader wants to see it, without its unit. */
export function numberText(
  value: number,
  digits: number,
  unit: string,
  display: DisplayUnits,
): string {
  const { out, moreDigits } = conversionOf(unit, display);
  return withDecimal(fixed(out(value), Math.max(0, digits + moreDigits)), display);
}

/** The same, with its unit. */
export const quantityText = (
  value: number,
  digits: number,
  unit: string,
  display: DisplayUnits,
): string => `${numberText(value, digits, unit, display)} ${conversionOf(unit, display).unit}`;

/** A difference of two values, with its sign: a factor applies, an offset does not. */
export function signedNumberText(
  difference: number,
  digits: number,
  unit: string,
  display: DisplayUnits,
): string {
  const { out, moreDigits } = conversionOf(unit, display);
  const size = Math.abs(out(Math.abs(difference)) - out(0));
  const text = fixed(size, Math.max(0, digits + moreDigits));
  return `${difference < 0 ? '−' : '+'}${withDecimal(text, display)}`;
}

/** The same, with its unit. */
export const signedText = (
  difference: number,
  digits: number,
  unit: string,
  display: DisplayUnits,
): string =>
  `${signedNumberText(difference, digits, unit, display)} ${conversionOf(unit, display).unit}`.trim();
