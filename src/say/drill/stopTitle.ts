import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import type { Layer } from '../../ask/outcome';

/** What stands between a stuck pump and the tank: "a run-time limit of 10 min an hour". */
export function stopTitle(stop: Layer['stop']): string {
  if (stop.id === 'secondSwitch') return say.layers.secondSwitch(figure(stop.aboveLevelL));
  if (stop.id === 'runLimit') return say.layers.runLimit(figure(stop.minPerH));
  return say.layers[stop.id];
}
