import { say as words } from '../../shared/words/shelf';
import * as v from 'valibot';
import { readTank, type Tank } from './tanks';

const TYPE = 'paper-reef/everything';
const VERSION = 1;

/** Everything that is kept in this browser, as one file. */
export interface Everything {
  readonly tanks: readonly Tank[];
  /** Units, decimal sign, theme, as they were chosen; read field by field. */
  readonly preferences: unknown;
}

export type Read =
  | { readonly ok: true; readonly everything: Everything }
  | { readonly ok: false; readonly problems: readonly string[] };

/** The edition of a save is this browser's own business. */
const withoutEdition = ({ id, name, bench, log }: Tank): Tank => ({ id, name, bench, log });

export const everythingText = ({ tanks, preferences }: Everything): string =>
  `${JSON.stringify(
    { type: TYPE, version: VERSION, tanks: tanks.map(withoutEdition), preferences },
    null,
    1,
  )}\n`;

const frame = v.object({
  type: v.literal(TYPE),
  version: v.pipe(v.number(), v.integer()),
  tanks: v.pipe(v.array(v.unknown()), v.minLength(1), v.maxLength(200)),
  preferences: v.optional(v.unknown(), {}),
});

const refused = (...problems: string[]): Read => ({ ok: false, problems });

/** Reads such a file; nothing is taken unless all of it can be read. Never throws. */
export function readEverything(text: string): Read {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return refused(words.everything.noJson);
  }
  const framed = v.safeParse(frame, raw);
  if (!framed.success) {
    return refused(words.everything.notOurs);
  }
  const { version, tanks, preferences } = framed.output;
  if (version !== VERSION) {
    return refused(words.everything.otherVersion(String(version), String(VERSION)));
  }
  const read = tanks.map((tank) => readTank(tank));
  const problems = read.flatMap(({ whole }, i) =>
    whole ? [] : [words.everything.tankUnread(String(i + 1))],
  );
  if (problems.length > 0) return refused(...problems);
  return { ok: true, everything: { tanks: read.map(({ tank }) => tank!), preferences } };
}

/** The tanks of a file beside those that are here: the same stay single, others get a free name. */
export function besides(here: readonly Tank[], file: readonly Tank[]): Tank[] {
  const all = [...here];
  for (const tank of file) {
    const text = JSON.stringify(withoutEdition(tank));
    if (all.some((one) => JSON.stringify(withoutEdition(one)) === text)) continue;
    let id = tank.id;
    for (let n = 2; all.some((one) => one.id === id); n++) id = `${tank.id}-${n}`;
    all.push({ ...withoutEdition(tank), id });
  }
  return all.slice(here.length);
}
