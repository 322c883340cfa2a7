import { withoutChalk } from '../../../shared/scenario/chalk';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf } from '../../../shared/verdict/lineResult';
import type { SimulationOptions } from '../../engine/simulation';
import { runDrill } from './drillRun';
import {
  changePlan,
  plainResponses,
  type Remedy,
  type ResponseChoices,
  type ResponsePlan,
} from './responsePlans';
import { carbonatedUntilBack, co2AirUntilBack } from './untilBack';

/** How one response went: when pH was back for good, and how far it went below. */
export interface ResponseResult {
  readonly remedy: Remedy;
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

function resultOf({ remedy, scenario }: ResponsePlan, options: SimulationOptions) {
  const { trace, lines } = runDrill(scenario, options);
  const high = lineOf(lines, 'phHigh');
  return {
    ...{ remedy, outsideH: high.outsideH, backH: high.backH },
    neverLeft: high.firstH === undefined,
    ph: readColumn(trace, 'ph_nbs').slice(),
    dkh: readColumn(trace, 'alkalinity_dkh').slice(),
    peakPh: high.worst,
    lowestPh: lineOf(lines, 'phLow').worst,
    lowestDkh: lineOf(lines, 'alkalinityLow').worst,
  };
}

/** Every response against the same failure, without chalk; those with CO2 end once pH is back. */
export async function tryResponses(
  asked: Scenario,
  choices: ResponseChoices,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<ResponseResult[] | undefined> {
  const scenario: Scenario = { ...withoutChalk(asked), responses: [] };
  const plans = [
    ...plainResponses(scenario, choices).map((plan) => () => plan),
    () => carbonatedUntilBack(scenario, options),
    () => co2AirUntilBack(scenario, choices, options),
    () => changePlan(scenario, choices),
  ];
  const results: ResponseResult[] = [];
  for (const planOf of plans) {
    results.push(resultOf(planOf(), options));
    if (!(await pause())) return undefined;
  }
  return results;
}
