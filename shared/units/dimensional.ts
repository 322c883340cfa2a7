import { toFigures } from './digits';
import { say } from '../words/problems';
import { create, createUnitDependencies, unitDependencies, type FactoryFunctionMap } from 'mathjs';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { spokenUnit } from './spokenUnit';
import type { ParsedQuantity } from './parsedQuantity';
import { testUnit } from './testUnits';

/** Loaded only when somebody types a unit other than the field's own. */
const math = create({ unitDependencies, createUnitDependencies } as unknown as FactoryFunctionMap);

/** Equivalents of alkalinity as an amount of its own, so that nobody converts it to moles by chance. */
math.createUnit?.('meq', { prefixes: 'none' } as never);
math.createUnit?.('dKH', `${meqPerLPerDkh} meq/L`);

const names: Readonly<Record<string, string>> = {
  '°c': 'degC',
  '°f': 'degF',
  c: 'degC',
  f: 'degF',
  'm²': 'm^2',
  l: 'L',
  ml: 'mL',
  'us gal': 'gal',
  gallon: 'gal',
  gallons: 'gal',
  d: 'day',
  tag: 'day',
  tage: 'day',
  tagen: 'day',
  days: 'day',
  hours: 'h',
  stunden: 'h',
  dkh: 'dKH',
};

/** Writes a unit the way the library reads it. */
const readable = (unit: string): string =>
  unit
    .split('/')
    .map((part) => names[part.trim().toLowerCase()] ?? part.trim())
    .join('/');

export function convert(number: number, typedUnit: string, unit: string): ParsedQuantity {
  // What a test kit prints is known by its own names; they are not all of them units elsewhere.
  const printed = testUnit(unit, typedUnit);
  if (printed) {
    try {
      return { ok: true, value: toFigures(printed.toOwn(number), 12) };
    } catch (error) {
      return { ok: false, message: `${(error as Error).message}.` };
    }
  }
  // "4 L" in a field of L/day means L/day: what is left out is the field's own.
  const per = unit.indexOf('/');
  const whole = per > 0 && !typedUnit.includes('/') ? typedUnit + unit.slice(per) : typedUnit;
  try {
    const value = math.unit!(number, readable(whole)).toNumber(readable(unit));
    if (!Number.isFinite(value)) throw new RangeError('not finite');
    return { ok: true, value: toFigures(value, 12) };
  } catch {
    return {
      ok: false,
      message: unit
        ? say.typed.otherUnit(typedUnit, spokenUnit(unit))
        : say.typed.unitWhereNone(typedUnit),
    };
  }
}
