import { parentPort, workerData } from 'node:worker_threads';
import { usualSpreads } from '../../shared/verdict/spreads';
import { usualOptions } from '../../workers/engine/simulation';
import { memberOptions, runMember } from '../../workers/studies/drill/memberResult';
import { scenarioFromFile } from '../runs/scenarioFiles';

const { from, to, days } = workerData as { from: number; to: number; days: number };
const scenario = { ...scenarioFromFile('drill-stuck-pump.json'), days };
const options = memberOptions(scenario, usualOptions);
let peak = 0;
for (let index = from; index < to; index++) {
  const { lines } = runMember(scenario, usualSpreads, 1, index, options);
  peak = Math.max(peak, lines[0]!.worst);
}
parentPort!.postMessage(peak);
