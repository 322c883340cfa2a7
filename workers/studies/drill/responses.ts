import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { highest, lowest } from '../../../shared/verdict/measures';
import type { SimulationOptions } from '../../engine/simulation';
import { runDrill } from './drillRun';
import { responsePlans, type ResponseChoices } from './responsePlans';

/** How one response went: when pH was back for good, and how far it went below. */
export interface ResponseResult {
  readonly id: string;
  readonly title: string;
  readonly ph: Float64Array;
  readonly dkh: Float64Array;
  readonly peakPh: number;
  readonly outsideH: number;
  /** h of the trial; undefined when it is not back within the trial, or never left. */
  readonly backH: number | undefined;
  readonly neverLeft: boolean;
  readonly lowestPh: number;
  readonly lowestDkh: number;
}

/** Every response against the same failure; the order is that of the plans. */
export async function tryResponses(
  scenario: Scenario,
  choices: ResponseChoices,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<ResponseResult[] | undefined> {
  const { trace } = runDrill(scenario, options);
  const riseDkh = highest(trace, 'alkalinity_dkh').value - scenario.tank.alkalinityDkh;
  const results: ResponseResult[] = [];
  for (const { id, title, scenario: plan } of responsePlans(scenario, choices, riseDkh)) {
    const outcome = runDrill(plan, options);
    const line = outcome.lines.find((one) => one.id === 'phHigh')!;
    results.push({
      ...{ id, title, outsideH: line.outsideH, backH: line.backH },
      neverLeft: line.firstH === undefined,
      ph: readColumn(outcome.trace, 'ph_nbs').slice(),
      dkh: readColumn(outcome.trace, 'alkalinity_dkh').slice(),
      peakPh: line.worst,
      lowestPh: lowest(outcome.trace, 'ph_nbs').value,
      lowestDkh: lowest(outcome.trace, 'alkalinity_dkh').value,
    });
    if (!(await pause())) return undefined;
  }
  return results;
}
