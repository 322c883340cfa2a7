import { toFigures } from '../units/digits';
import { conversionOf, type DisplayUnits } from '../units/display';
import { withDecimal } from '../units/format';
import { fieldAt, type FieldPath } from './fields';
import { wordFor } from './words';

/** Digits that tell two settings apart; a specific gravity lies too near 1 for four. */
const DIGITS = 4;
const GRAVITY_DIGITS = 5;

function numberText(value: number, path: FieldPath, display: DisplayUnits): string {
  const { out, unit } = conversionOf(fieldAt(path)?.quantity?.unit ?? '', display);
  const shown = toFigures(out(value), unit === 'SG' ? GRAVITY_DIGITS : DIGITS);
  return `${withDecimal(String(shown), display)} ${unit}`.trim();
}

/** The value of a setting in the reader's units; of a list or a part, each thing in it. */
export function settingText(value: unknown, path: FieldPath, display: DisplayUnits): string {
  if (value === undefined) return '—';
  if (typeof value === 'number') return numberText(value, path, display);
  if (typeof value !== 'object' || value === null) return wordFor(String(value));
  const list = Array.isArray(value);
  return Object.entries(value)
    .map(([key, inner]) => settingText(inner, [...path, list ? Number(key) : key], display))
    .filter((words) => words !== '')
    .join(list ? ' + ' : ', ');
}
