import { readdirSync, readFileSync } from 'node:fs';
import { parseScenarioText } from '../../shared/scenario/parse';
import { sentence } from '../../shared/scenario/problem';
import type { Scenario } from '../../shared/scenario/schema';

const folder = new URL('../../scenarios/', import.meta.url);

export const scenarioFiles: readonly string[] = readdirSync(folder).filter((name) =>
  name.endsWith('.json'),
);

export function scenarioFromFile(name: string): Scenario {
  const parsed = parseScenarioText(readFileSync(new URL(name, folder), 'utf8'));
  if (!parsed.ok) throw new Error(`${name}:\n${parsed.problems.map(sentence).join('\n')}`);
  return parsed.scenario;
}
