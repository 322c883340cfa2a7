import { run } from '../../workers/engine/run';
import { scenarioFromFile } from '../runs/scenarioFiles';

/** Both closures after 365 days of the typical plan. */
export function yearClosures() {
  const { closures } = run({ ...scenarioFromFile('limewater-holds.json'), days: 365 });
  return closures;
}
