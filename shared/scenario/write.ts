import { parseScenario } from './parse';
import type { Scenario } from './schema';

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

/** A scenario from the few lines that differ from the usual tank; throws on a mistake of ours. */
export function scenarioOf(value: unknown): Scenario {
  const parsed = parseScenario(value);
  if (!parsed.ok)
    throw new RangeError(parsed.problems.map(({ path, got }) => `${path}: ${got}`).join('\n'));
  return parsed.scenario;
}
