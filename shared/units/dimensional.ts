import { create, createUnitDependencies, unitDependencies, type FactoryFunctionMap } from 'mathjs';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { salinityFromSpecificGravity2525 } from '../seawater/specificGravity';
import type { ParsedQuantity } from './parsedQuantity';

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
  gallon: 'gal',
  gallons: 'gal',
  d: 'day',
  days: 'day',
  hours: 'h',
  dkh: 'dKH',
};

/** Writes a unit the way the library reads it. */
const readable = (unit: string): string =>
  unit
    .split('/')
    .map((part) => names[part.trim().toLowerCase()] ?? part.trim())
    .join('/');

export function convert(number: number, typedUnit: string, unit: string): ParsedQuantity {
  if (unit === 'ppt' && typedUnit.toLowerCase() === 'sg') {
    return { ok: true, value: salinityFromSpecificGravity2525(number) };
  }
  try {
    const value = math.unit!(number, readable(typedUnit)).toNumber(readable(unit));
    if (!Number.isFinite(value)) throw new RangeError('not finite');
    return { ok: true, value: Number(value.toPrecision(12)) };
  } catch {
    return {
      ok: false,
      message: `“${typedUnit}” cannot be turned into ${unit || 'a plain number'}. Type the number in ${unit || 'no unit'}, or another unit of that kind.`,
    };
  }
}
