import { scenarioFiles, scenarioFromFile } from '../runs/scenarioFiles';
import { benchCost } from './cost';
import { benchDrag } from './drag';
import { benchEnsemble } from './ensemble';
import { benchLog } from './log';
import { benchEngine } from './engine';
import { benchLook } from './look';

/** One figure a line: name, value, unit. */
export function print(name: string, value: number, unit: string): void {
  console.log(`${name} ${Number(value.toPrecision(4))} ${unit}`);
}

benchEngine(
  print,
  scenarioFiles.map((name) => [name, { ...scenarioFromFile(name), days: 90 }] as const),
);
benchLook(print, scenarioFromFile('limewater-holds.json'));
benchCost(print, { ...scenarioFromFile('limewater-holds.json'), days: 90 });
await benchEnsemble(print);
benchLog(print, scenarioFromFile('limewater-holds.json'));
await benchDrag(print);
// The preview server's connections would keep the process waiting.
process.exit(0);
