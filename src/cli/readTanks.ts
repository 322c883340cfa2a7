import { readJson } from '../../shared/scenario/jsonText';
import { EVERYTHING_TYPE, LONGEST_FILE, readEverything } from '../store/everything';
import { SCENARIO_TYPE } from '../../shared/scenario/schema';
import { readTank } from '../store/readTank';
import type { Tank } from '../store/tanks';

export type ReadTanks =
  | { readonly ok: true; readonly tanks: readonly Tank[] }
  | { readonly ok: false; readonly problems: readonly string[] };

const refused = (...problems: string[]): ReadTanks => ({ ok: false, problems });

/** The tanks of a backup, or of a record of one tank as the browser keeps it; whole, or every problem. */
export function readTanks(text: string): ReadTanks {
  const json = readJson(text, 'a tank', LONGEST_FILE);
  if (!json.ok) return refused(`got ${json.problem.got}; expected ${json.problem.expected}`);
  const { type } = (json.value ?? {}) as { readonly type?: unknown };
  if (type === SCENARIO_TYPE) {
    return refused('This is a plan without a log: npm run simulate runs it.');
  }
  if (type === EVERYTHING_TYPE) {
    const read = readEverything(text, Infinity);
    return read.ok ? { ok: true, tanks: read.everything.tanks } : read;
  }
  const { tank, problems } = readTank(json.value);
  return tank && problems.length === 0 ? { ok: true, tanks: [tank] } : { ok: false, problems };
}
