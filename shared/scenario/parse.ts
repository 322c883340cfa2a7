import { say } from '../words/problems';
import * as v from 'valibot';
import { crossProblems } from './crossChecks';
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

const wholeFile = (got: string, expected: string, wayOut: string): Problem => ({
  path: say.wholeFile,
  what: say.file.scenario,
  got,
  expected,
  wayOut,
});

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

/** Whether a value has the shape of a scenario; its numbers may still not go together. */
export const isScenario = (value: unknown): value is Scenario => v.is(scenarioSchema, value);

/** Checks a value that should be a scenario; gives it whole, or every problem at once. */
export function parseScenario(value: unknown): Parsed {
  const current = upToDate(value);
  if ('problem' in current) return refuse(current.problem);
  const result = v.safeParse(scenarioSchema, current.file);
  if (!result.success) return refuse(...uniqueProblems(result.issues.map(problemOf)));
  const problems = crossProblems(result.output);
  return problems.length > 0 ? refuse(...problems) : { ok: true, scenario: result.output };
}

/** Reads the text of a scenario file. */
export function parseScenarioText(text: string): Parsed {
  if (text.length > LONGEST) {
    return refuse(
      wholeFile(
        say.file.characters(String(text.length)),
        say.file.atMost(String(LONGEST)),
        say.file.tooLong,
      ),
    );
  }
  try {
    return parseScenario(JSON.parse(text));
  } catch (error) {
    return refuse(
      wholeFile(
        error instanceof Error ? error.message : say.file.unreadable,
        say.file.json,
        say.file.mendJson,
      ),
    );
  }
}

function uniqueProblems(problems: readonly Problem[]): Problem[] {
  const byPlace = new Map(problems.map((problem) => [`${problem.path} ${problem.what}`, problem]));
  return [...byPlace.values()].slice(0, MOST_PROBLEMS);
}
