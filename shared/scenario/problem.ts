import { say } from '../words/problems';
import type * as v from 'valibot';
import { fieldIn, pathText, type Field, type FieldPath } from './fields';
import { inSight } from './inSight';
import { scenarioSchema } from './schema';

/** One thing that is wrong with a scenario: where, what it is, what came, what was expected, a way out. */
export interface Problem {
  readonly path: string;
  readonly what: string;
  readonly got: string;
  readonly expected: string;
  readonly wayOut: string;
}

export function show(value: unknown): string {
  if (value === undefined) return say.nothing;
  if (typeof value === 'number') return String(value);
  const text = inSight(JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

const rangeText = ({ quantity }: Field): string =>
  quantity
    ? say.range(String(quantity.min), `${quantity.max} ${quantity.unit}`.trim())
    : say.anotherValue;

const usualText = ({ quantity }: Field): string =>
  quantity?.default === undefined
    ? say.field.give
    : say.field.leaveOut(`${quantity.default} ${quantity.unit}`.trim());

/** The known name that starts most like the unknown one. */
function nearest(name: string, known: readonly string[]): string | undefined {
  const shared = (a: string, b: string) => {
    let n = 0;
    while (n < a.length && a[n]?.toLowerCase() === b[n]?.toLowerCase()) n++;
    return n;
  };
  const best = [...known].sort((a, b) => shared(name, b) - shared(name, a))[0];
  return best !== undefined && shared(name, best) >= 3 ? best : undefined;
}

function unknownField(root: unknown, path: FieldPath, at: string): Problem {
  const known = fieldIn(root, path.slice(0, -1))?.keys ?? [];
  const name = String(path.at(-1));
  const near = nearest(name, known);
  const unit =
    near === undefined ? undefined : fieldIn(root, [...path.slice(0, -1), near])?.quantity?.unit;
  return {
    path: at,
    what: say.field.unknown,
    got: show(name),
    expected: say.oneOf(known.join(', ')),
    wayOut:
      near === undefined
        ? say.field.removeOrCorrect
        : unit
          ? say.field.didYouMeanIn(near, unit)
          : say.field.didYouMean(near),
  };
}

function wrongNumber(issue: v.BaseIssue<unknown>, field: Field, at: string): Problem {
  const mistake =
    typeof issue.input === 'number' ? field.quantity?.mistake?.(issue.input) : undefined;
  const isText = typeof issue.input === 'string';
  return {
    path: at,
    what: field.title,
    got: show(issue.input),
    expected: rangeText(field),
    wayOut: mistake
      ? `${mistake}.`
      : isText
        ? say.field.plainNumber(field.quantity?.unit || say.field.aNumber)
        : usualText(field),
  };
}

/** The validator's word for a kind of value, in the reader's. */
const kindText = (expected: string): string =>
  expected in say.kinds ? say.kinds[expected as keyof typeof say.kinds] : expected;

/** Turns what the validator found in a value of a schema into a sentence's parts. */
export function problemOf(
  issue: v.BaseIssue<unknown>,
  root: unknown = scenarioSchema,
  base: FieldPath = [],
): Problem {
  const path = [...base, ...(issue.path ?? []).map(({ key }) => key as string | number)];
  const at = inSight(pathText(path));
  const field = fieldIn(root, path);
  if (!field || issue.expected === 'never') return unknownField(root, path, at);
  if (field.quantity && issue.input !== undefined) return wrongNumber(issue, field, at);
  const expected = field.quantity
    ? rangeText(field)
    : field.options.length > 0
      ? say.oneOf(field.options.join(', '))
      : kindText(issue.expected ?? issue.message);
  return {
    path: at,
    what: field.title,
    got: issue.input === undefined ? say.missing : show(issue.input),
    expected,
    wayOut: issue.input === undefined ? say.field.add : say.field.change,
  };
}
