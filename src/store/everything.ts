import { readJson } from '../../shared/scenario/jsonText';
import { say as problemWords } from '../../shared/words/problems';
import { say as words } from '../../shared/words/shelf';
import * as v from 'valibot';
import { readTank } from './readTank';
import { withoutEdition, type Tank } from './tanks';

export const EVERYTHING_TYPE = 'paper-reef/everything';
const VERSION = 1;
/** Longest file read, in characters: forty tanks with eight years of tests stay far below it. */
export const LONGEST_FILE = 100_000_000;
const MOST_TANKS = 200;
const MOST_PROBLEMS = 30;
const say = words.everything;
const { named } = problemWords;

/** Everything that is kept in this browser, as one file. */
export interface Everything {
  readonly tanks: readonly Tank[];
  /** Units, decimal sign, theme, as they were chosen; read field by field. */
  readonly preferences: unknown;
}

export type Read =
  | { readonly ok: true; readonly everything: Everything }
  | { readonly ok: false; readonly problems: readonly string[] };

export const everythingText = ({ tanks, preferences }: Everything): string =>
  `${JSON.stringify(
    { type: EVERYTHING_TYPE, version: VERSION, tanks: tanks.map(withoutEdition), preferences },
    null,
    1,
  )}\n`;

const frame = v.object({
  type: v.literal(EVERYTHING_TYPE),
  version: v.pipe(v.number(), v.integer()),
  tanks: v.pipe(v.array(v.unknown()), v.minLength(1), v.maxLength(MOST_TANKS)),
  preferences: v.optional(v.unknown(), {}),
});

const refused = (...problems: string[]): Read => ({ ok: false, problems });

/** Reads such a file; nothing is taken unless all of it can be read. Never throws. */
export function readEverything(text: string, mostProblems = MOST_PROBLEMS): Read {
  const json = readJson(text, say.title, LONGEST_FILE);
  if (!json.ok) return refused(say.unreadable(json.problem.got, json.problem.expected));
  const framed = v.safeParse(frame, json.value);
  if (!framed.success) return refused(say.notOurs);
  const { version, tanks, preferences } = framed.output;
  if (version !== VERSION) return refused(say.otherVersion(String(version), String(VERSION)));
  const read = tanks.map((tank, i) => readTank(tank, `tank-${i + 1}`));
  const problems = read.flatMap((one, i) =>
    one.problems.map((problem) => named(say.tank(String(i + 1)), problem)),
  );
  if (problems.length === 0) {
    return { ok: true, everything: { tanks: read.map(({ tank }) => tank!), preferences } };
  }
  const more = problems.length - mostProblems;
  return refused(
    ...problems.slice(0, mostProblems),
    ...(more > 0 ? [say.andMore(String(more))] : []),
  );
}
