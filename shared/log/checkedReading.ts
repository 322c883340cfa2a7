import * as v from 'valibot';
import { say as csv } from '../words/csv';
import { believable } from './believable';
import { hoursOf } from './localTime';
import { datedDay } from './spokenTime';
import { readingField, readingSchema, saysSomething, type Reading } from './reading';
import { refuse } from './readValue';

export type ReadingOutcome =
  { readonly reading: Reading } | { readonly reasons: readonly string[] };

const say = csv.rows;

/** What is read so far of a line: its moment, and what stands in its fields. */
export interface Read {
  readonly at: string | undefined;
  /** The moment as it was written. */
  readonly whenText: string;
  /** Numbers in the fields' own units, words, or nothing. */
  readonly values: Readonly<Record<string, unknown>>;
  /** Why fields could not be read. */
  readonly reasons: readonly string[];
}

/** What lies ahead by no more is meant so; a mistyped year is farther off. */
const NEAR_H = 60 * 24;

function whyNotThen({ at, whenText }: Read, now: string): string[] {
  const { title } = readingField('at');
  if (at === undefined) return [refuse(title, whenText, say.realMoment)];
  const { first, last } = believable(now);
  if (at >= first && at <= last) return [];
  const expected =
    at > last && hoursOf(at) - hoursOf(now) < NEAR_H
      ? say.ahead(datedDay(last))
      : say.believable(datedDay(first), datedDay(last));
  return [refuse(title, whenText, expected)];
}

/** A line that was read as a reading, or every reason why it is none; `now` is the local time. */
export function checkedReading(read: Read, now: string): ReadingOutcome {
  const reasons = [...whyNotThen(read, now), ...read.reasons];
  if (reasons.length > 0) return { reasons };
  const checked = v.safeParse(readingSchema, { at: read.at, ...read.values });
  if (!checked.success) {
    return {
      reasons: checked.issues.map((issue) => {
        const name = issue.path?.[0]?.key as keyof Reading;
        return refuse(readingField(name).title, String(issue.input), issue.expected ?? say.another);
      }),
    };
  }
  return saysSomething(checked.output) ? { reading: checked.output } : { reasons: [say.nothing] };
}
