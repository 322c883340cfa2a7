import * as v from 'valibot';
import { say } from '../words/log';
import { isLocalTime } from './localTime';

const { checks } = say;

/** Something that should work when it is needed, and when it was tried last. */
export const checkSchema = v.pipe(
  v.strictObject({
    what: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(120), v.title(checks.what)),
    /** A local time; empty: never. */
    testedAt: v.optional(
      v.pipe(
        v.string(),
        v.check((text) => text === '' || isLocalTime(text), 'a date and a time of day'),
        v.title(checks.tested),
      ),
      '',
    ),
  }),
  v.title(checks.title),
);

export type Check = v.InferOutput<typeof checkSchema>;

/** One of each, the newest test of it; what was never tested first, then what was tested longest ago. */
export function oldestFirst(list: readonly Check[]): Check[] {
  const newest = new Map<string, Check>();
  for (const check of list) {
    const known = newest.get(check.what);
    if (!known || known.testedAt < check.testedAt) newest.set(check.what, check);
  }
  return [...newest.values()].sort(
    (a, b) => a.testedAt.localeCompare(b.testedAt) || a.what.localeCompare(b.what),
  );
}
