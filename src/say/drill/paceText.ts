import type { Scenario } from '../../../shared/scenario/schema';
import { say } from '../../../shared/words/drillTold';
import { figure, figureText } from '../../../shared/words/figure';
import { limitText } from '../lineTexts';

/** What the times of a heater that fails rest on: how fast, and where to; nothing of other failures. */
export const paceText = (faults: Scenario['faults'], tempC: number): string =>
  faults
    .filter(({ kind }) => kind === 'heater')
    .map(({ degreesPerH, endTempC }) =>
      (endTempC > tempC ? say.warms : say.cools)(
        ...([figure(degreesPerH), figureText(limitText('temperature', endTempC))] as const),
      ),
    )
    .join(' ');
