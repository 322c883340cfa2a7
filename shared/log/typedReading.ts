import { say } from '../words/logPage';
import { ownUnit, type LogColumn } from './csv/columns';
import { decimalMark, readNumber } from './csv/numbers';
import { readRow } from './csv/readLog';
import { parseQuantity } from '../units/parse';
import { testUnit } from '../units/testUnits';
import { typedNumber } from '../units/typedNumber';
import { readingNames, type Reading, type ReadingName } from './reading';

/** What stands in the fields of a form, as text, and the units chosen beside them. */
export type Typed = Partial<Record<ReadingName, string>>;

export type TypedOutcome =
  | { readonly ok: true; readonly reading: Reading }
  | { readonly ok: false; readonly problems: readonly string[] };

/** What a line must say more than whose bottle it was. */
const worthALine: readonly ReadingName[] = readingNames.filter(
  (name) => !['at', 'test', 'accuracyDkh', 'lot', 'testsLeft'].includes(name),
);

/** A typed number with a decimal point; "1,026" is one where its unit is a specific gravity. */
function pointed(text: string, unit: string | undefined): string {
  const { digits, unit: named } = typedNumber(text);
  const isGravity = /^sg/i.test(named || (unit ?? ''));
  const mark = decimalMark([digits]) ?? (isGravity && digits.includes(',') ? ',' : '.');
  const number = readNumber(digits, mark);
  return number === undefined ? text.trim() : `${number} ${named}`.trim();
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
  const columns = readingNames.map((target): LogColumn => {
    const own = ownUnit(target);
    return { header: target, target, unit: own === undefined ? undefined : (units[target] ?? own) };
  });
  const cells = columns.map(({ target, unit }) => {
    const text = typed[target as ReadingName] ?? '';
    return unit === undefined ? text : pointed(text, unit);
  });
  const outcome = readRow(cells, { columns, now, decimal: '.', order: 'dmy' });
  if ('reasons' in outcome) return { ok: false, problems: outcome.reasons };
  const { reading } = outcome;
  const half = (reading.additive === undefined) !== (reading.grams === undefined);
  const problems = [
    ...(worthALine.some((name) => reading[name] !== undefined) ? [] : [say.enter.nothingTyped]),
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
