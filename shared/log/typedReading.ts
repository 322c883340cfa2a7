import { say } from '../words/logPage';
import { checkedReading } from './checkedReading';
import { readMoment } from './csv/dates';
import { decimalMark, type DecimalMark } from './csv/numbers';
import { namedBy, readValue, refuse } from './readValue';
import { parseQuantity } from '../units/parse';
import { testUnit } from '../units/testUnits';
import { typedNumber } from '../units/typedNumber';
import {
  ownUnit,
  readingField,
  readingNames,
  tellsOfWater,
  type Reading,
  type ReadingName,
} from './reading';

/** What stands in the fields of a form, as text, and the units chosen beside them. */
export type Typed = Partial<Record<ReadingName, string>>;

export type TypedOutcome =
  | { readonly ok: true; readonly reading: Reading }
  | { readonly ok: false; readonly problems: readonly string[] };

/** A line must say more than whose bottle it was. */
const isWorthALine = (reading: Reading): boolean =>
  tellsOfWater(reading) || (reading.notes ?? reading.event) !== undefined;

const whyNoLine = ({ lot, equipment }: Reading): string => {
  if (equipment !== undefined) return say.enter.equipmentAlone;
  return lot === undefined ? say.enter.nothingTyped : say.enter.lotAlone;
};

/** A file may have it; typed beside a tank it is a slip. */
const EXPONENT = /\de[-+]?\d/i;

/** How a typed number writes its fraction; "1,026" is one where its unit is a specific gravity. */
function markOf(text: string, unit: string): DecimalMark {
  const { digits, unit: named } = typedNumber(text);
  const isGravity = /^sg/i.test(named || unit);
  return decimalMark([digits]) ?? (isGravity && digits.includes(',') ? ',' : '.');
}

/**
 * The same with every unit turned into the field's own that no test kit prints ("1 oz"): what reads
 * those is fetched when first met.
 */
export async function inOwnUnits(typed: Typed): Promise<Typed> {
  const turned = { ...typed };
  for (const name of readingNames) {
    const text = typed[name] ?? '';
    const own = ownUnit(name);
    const { unit } = typedNumber(text);
    if (own === undefined || unit === '' || testUnit(own, unit)) continue;
    const parsed = await parseQuantity(text, own);
    if (parsed.ok) turned[name] = `${parsed.value} ${own}`;
  }
  return turned;
}

/** A line of the log from a form, or every problem at once. */
export function readTyped(typed: Typed, units: Typed, now: string): TypedOutcome {
  const values: Record<string, unknown> = {};
  const reasons: string[] = [];
  for (const name of readingNames) {
    const text = typed[name] ?? '';
    if (name === 'at' || text.trim() === '') continue;
    const own = ownUnit(name);
    if (own !== undefined && EXPONENT.test(text))
      reasons.push(refuse(readingField(name).title, text, say.enter.onlyDigits));
    else if (own === undefined) values[name] = namedBy[name]?.(text) ?? text;
    else {
      const unit = units[name] ?? own;
      const value = readValue(name, text, unit, markOf(text, unit));
      if (typeof value === 'string') reasons.push(value);
      else values[name] = value;
    }
  }
  const whenText = (typed.at ?? '').trim();
  const at = readMoment(whenText, '', 'dmy');
  const outcome = checkedReading({ at, whenText, values, reasons }, now);
  if ('reasons' in outcome) return { ok: false, problems: outcome.reasons };
  const { reading } = outcome;
  const half = (reading.additive === undefined) !== (reading.grams === undefined);
  const problems = [
    ...(isWorthALine(reading) ? [] : [whyNoLine(reading)]),
    ...(half ? [say.enter.halfADose] : []),
  ];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, reading };
}

/** A line of the log as text, in the fields' own units. */
export const typedOf = (reading: Reading): Typed =>
  Object.fromEntries(
    readingNames.flatMap((name) =>
      reading[name] === undefined ? [] : [[name, String(reading[name])]],
    ),
  );
