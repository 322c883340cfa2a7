import { readdirSync, readFileSync } from 'node:fs';
import { parseScenarioText } from '../../shared/scenario/parse';
import { sentence } from '../../shared/scenario/sentence';
import type { Scenario } from '../../shared/scenario/schema';

const folder = new URL('../../scenarios/', import.meta.url);

const allFiles: readonly string[] = readdirSync(folder).filter((name) => name.endsWith('.json'));

/** Plans in which nothing breaks, and drills. */
export const scenarioFiles = allFiles.filter((name) => !name.startsWith('drill-'));
export const drillFiles = allFiles.filter((name) => name.startsWith('drill-'));

export function scenarioFromFile(name: string): Scenario {
  const parsed = parseScenarioText(readFileSync(new URL(name, folder), 'utf8'));
  if (!parsed.ok) throw new Error(`${name}:\n${parsed.problems.map(sentence).join('\n')}`);
  return parsed.scenario;
}
