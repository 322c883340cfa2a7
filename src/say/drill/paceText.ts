import type { Scenario } from '../../../shared/scenario/schema';
import { wordFor } from '../../../shared/scenario/words';
import { say } from '../../../shared/words/drillTold';
import { figure, figureText } from '../../../shared/words/figure';
import { limitText } from '../lineTexts';

type Fault = Scenario['faults'][number];

function restsOn({ kind, degreesPerH, endTempC, grams, additive }: Fault, tempC: number): string[] {
  if (kind === 'overdose') return [say.pouredIn(figure(grams), wordFor(additive))];
  if (kind !== 'heater') return [];
  const warms = endTempC > tempC ? say.warms : say.cools;
  return [warms(figure(degreesPerH), figureText(limitText('temperature', endTempC)))];
}

/** What the times of a failure rest on: how fast a heater fails and where to, how much was poured in. */
export const paceText = (faults: Scenario['faults'], tempC: number): string =>
  faults.flatMap((fault) => restsOn(fault, tempC)).join(' ');
