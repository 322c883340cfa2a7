import { say } from '../words/bench';
import { parseScenario } from './parse';
import { sentence } from './sentence';
import { SCENARIO_TYPE, SCENARIO_VERSION, type Scenario } from './schema';

/** The text of a scenario file: every field written out, so that usual values may change later. */
export const scenarioText = (scenario: Scenario): string =>
  `${JSON.stringify(scenario, null, 2)}\n`;

/** A file name that a person recognises. */
export const scenarioFileName = ({ title }: Scenario): string =>
  `${
    title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'scenario'
  }.json`;

/** What a tank of which nothing is said is taken for: the size of the first example. */
const USUAL_TANK = { volumeL: 300, alkalinityDkh: 8.5 };
const USUAL_DAYS = 30;

/**
 * A whole scenario from the few fields that differ from the usual tank, in any format that files
 * have had (without `version`: today's, or that in which a fault's end was called `hours` where one is).
 * Throws a RangeError with every problem, a line each, where
 * `parseScenario` returns them: for what is written in code, not for what a reader brings.
 */
export function scenarioOf(given: object): Scenario {
  const { tank, ...rest } = given as { readonly tank?: unknown };
  const parsed = parseScenario({
    ...{ type: SCENARIO_TYPE, version: unsaidVersion(rest), title: say.plans.myTank },
    ...{ days: USUAL_DAYS, ...rest },
    tank: tank === undefined || isPart(tank) ? { ...USUAL_TANK, ...tank } : tank,
  });
  if (!parsed.ok) throw new RangeError(parsed.problems.map(sentence).join('\n'));
  return parsed.scenario;
}

/** The last format in which `hours` were a fault's end: code that was written for it goes on. */
const HOURS_UNTIL = 4;

function unsaidVersion({ faults }: { readonly faults?: unknown }): number {
  const old = Array.isArray(faults) && faults.some((fault) => isPart(fault) && 'hours' in fault);
  return old ? HOURS_UNTIL : SCENARIO_VERSION;
}

const isPart = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
