import { toDecimals } from '../../shared/units/digits';
import { say } from '../../shared/words/lessonFrame';
import { valueAt } from '../../shared/scenario/change';
import { quantityAt, type FieldPath } from '../../shared/scenario/fields';
import { conversionOf, usualDisplay, type DisplayUnits } from '../../shared/units/display';
import { decimalsOf, numberText, withDecimal } from '../../shared/units/format';
import { phText } from '../say/texts';
import type { LessonRuns, RunName } from './lesson';
import { measures, type MeasureId } from './measures';

/** A piece of a filled text; a stated number knows where it came from. */
export interface Piece {
  readonly text: string;
  readonly stated?: { readonly key: string; readonly value: number };
}

const PLACEHOLDER = /\{([^}]+)\}/u;

const isMeasure = (name: string): name is MeasureId => name in measures;

/** A unit as it is said in a sentence. */
const spoken = (unit: string): string =>
  ({ '1/h': say.units.perHour, h: say.units.hours, days: say.units.days })[unit] ??
  unit.replace('/day', say.units.aDay);

const withUnit = (number: string, unit: string) =>
  unit === '' ? number : `${number} ${spoken(unit)}`;

function measured(name: MeasureId, value: number, display: DisplayUnits): string {
  const { unit, digits } = measures[name];
  if (name === 'phHighest' || name === 'phLowest') return withDecimal(phText(value), display);
  return withUnit(numberText(value, digits, unit, display), conversionOf(unit, display).unit);
}

const pathOf = (name: string): FieldPath =>
  name.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));

function setting(path: FieldPath, value: number, display: DisplayUnits): string {
  const { quantity } = quantityAt(path);
  const { unit } = conversionOf(quantity.unit, display);
  const digits = decimalsOf(quantity.step);
  const number =
    unit === quantity.unit
      ? withDecimal(String(toDecimals(value, digits)), display)
      : numberText(value, digits, quantity.unit, display);
  return withUnit(number, unit);
}

/** The number that a placeholder stands for, and how it is written. */
export function statedAt(
  key: string,
  runs: LessonRuns,
  display: DisplayUnits = usualDisplay,
): { value: number; text: string } {
  const dot = key.indexOf('.');
  const run = runs[key.slice(0, dot) as RunName];
  const name = key.slice(dot + 1);
  if (isMeasure(name)) {
    const value = measures[name].of(run);
    return { value, text: measured(name, value, display) };
  }
  const path = pathOf(name);
  const value = valueAt(run.scenario, path) as number;
  return { value, text: setting(path, value, display) };
}

/** A text with its placeholders filled from the runs. */
export function fill(text: string, runs: LessonRuns, display: DisplayUnits): Piece[] {
  return text.split(PLACEHOLDER).map((part, i) => {
    if (i % 2 === 0) return { text: part };
    const { value, text: written } = statedAt(part, runs, display);
    return { text: written, stated: { key: part, value } };
  });
}

/** The keys that a text states. */
export const keysIn = (text: string): string[] =>
  text.split(PLACEHOLDER).filter((_, i) => i % 2 === 1);
