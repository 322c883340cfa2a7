import { scenarioFiles, scenarioFromFile } from '../runs/scenarioFiles';
import { benchEngine } from './engine';

/** One figure a line: name, value, unit. */
export function print(name: string, value: number, unit: string): void {
  console.log(`${name} ${Number(value.toPrecision(4))} ${unit}`);
}

benchEngine(
  print,
  scenarioFiles.map((name) => [name, { ...scenarioFromFile(name), days: 90 }] as const),
);
