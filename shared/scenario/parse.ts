import { say } from '../words/problems';
import * as v from 'valibot';
import { crossProblems } from './crossChecks';
import { readJson } from './jsonText';
import { longLists } from './longLists';
import { migrate } from './migrations';
import { problemOf, show, type Problem } from './problem';
import { SCENARIO_TYPE, SCENARIO_VERSION, scenarioSchema, type Scenario } from './schema';

export type Parsed =
  | { readonly ok: true; readonly scenario: Scenario }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Longest file read, in characters: a plan with hundreds of events stays far below it. */
const LONGEST = 1_000_000;
/** A file of junk would list thousands; so many are enough to see what it is. */
const MOST_PROBLEMS = 50;

const refuse = (...problems: Problem[]): Parsed => ({ ok: false, problems });

const versionProblem = (version: unknown): Problem => ({
  path: 'version',
  what: say.file.version,
  got: show(version),
  expected: say.file.versions(String(SCENARIO_VERSION)),
  wayOut:
    typeof version === 'number' && version > SCENARIO_VERSION
      ? say.file.newer
      : say.file.neverWritten,
});

/** Reads the two lines that say what a file is, and brings an older one up to date. */
function upToDate(value: unknown): { readonly file: unknown } | { readonly problem: Problem } {
  const header = v.safeParse(v.looseObject({ type: v.unknown(), version: v.unknown() }), value);
  if (!header.success || header.output.type !== SCENARIO_TYPE) {
    return {
      problem: {
        path: 'type',
        what: say.file.kind,
        got: show(header.success ? header.output.type : value),
        expected: show(SCENARIO_TYPE),
        wayOut: say.file.chooseOurs,
      },
    };
  }
  const { version } = header.output;
  if (typeof version !== 'number' || version > SCENARIO_VERSION) {
    return { problem: versionProblem(version) };
  }
  const migrated = migrate(header.output, version, SCENARIO_VERSION);
  return migrated.ok ? { file: migrated.file } : { problem: versionProblem(version) };
}

/**
 * The one way in for a plan, wherever it was kept: brought up to date, usual values filled in. Its
 * numbers may still not go together: the bench holds such a plan and says so.
 */
export function readScenario(value: unknown): Parsed {
  const current = upToDate(value);
  if ('problem' in current) return refuse(current.problem);
  const long = longLists(current.file);
  if (long.length > 0) return refuse(...long.slice(0, MOST_PROBLEMS));
  const result = v.safeParse(scenarioSchema, current.file);
  if (result.success) return { ok: true, scenario: result.output };
  return refuse(...firstProblems(result.issues));
}

/** Checks a value that should be a scenario to run; gives it whole, or every problem at once. */
export function parseScenario(value: unknown): Parsed {
  const read = readScenario(value);
  if (!read.ok) return read;
  const problems = crossProblems(read.scenario);
  return problems.length > 0 ? refuse(...problems) : read;
}

/** Reads the text of a scenario file. */
export function parseScenarioText(text: string): Parsed {
  const read = readJson(text, say.file.scenario, LONGEST);
  return read.ok ? parseScenario(read.value) : refuse(read.problem);
}

/** One problem a place. */
function firstProblems(issues: readonly v.BaseIssue<unknown>[]): Problem[] {
  const byPlace = new Map<string, Problem>();
  for (const issue of issues) {
    const problem = problemOf(issue);
    byPlace.set(`${problem.path} ${problem.what}`, problem);
    if (byPlace.size === MOST_PROBLEMS) break;
  }
  return [...byPlace.values()];
}
