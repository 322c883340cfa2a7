import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { run } from '../../engine/run';
import { dumpAt, worstHour } from './dump';

/** The whole reservoir at the worst hour of the day, with nothing that stops it. */
export interface WorstDump {
  readonly clockHour: number;
  readonly peakPh: number;
  readonly peakDkh: number;
}

/** What a stuck pump does to a plan at worst; undefined where there is no top-off. */
export function worstDump(scenario: Scenario): WorstDump | undefined {
  if (scenario.topOff.reservoirL === 0) return undefined;
  const clockHour = worstHour(scenario, ['phHigh']);
  const { lines } = run(dumpAt(scenario, clockHour));
  return {
    clockHour,
    peakPh: lineOf(lines, 'phHigh').worst,
    peakDkh: lineOf(lines, 'alkalinityHigh').worst,
  };
}
