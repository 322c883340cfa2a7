import { endOf } from '../../../shared/faults/endOf';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import { co2DemandG } from './co2Demand';
import { runDrill } from './drillRun';
import {
  carbonatedPlan,
  co2AirPlan,
  type ResponseChoices,
  type ResponsePlan,
} from './responsePlans';

/** A quarter of the demand at a time: there is time to measure between two portions. */
const PORTIONS = 4;
const MOST_PORTIONS = 8;
/** A shorter stretch cannot be set. */
const SHORTEST_H = 0.05;

const noticedH = ({ faults, start }: Scenario): number => endOf(faults[0]!, start.clockHour);

/** Whether pH stands above the keeper's limit at a moment, by the crossings found in the run. */
function isAbove({ crossings }: Run, timeH: number): boolean {
  const last = crossings.findLast(
    ({ limit, timeH: at }) => limit === 'phHigh' && at <= timeH + 1e-6,
  );
  return last?.into === 'outside';
}

/** When pH is first back inside from a moment on; undefined when it never is. */
const backH = ({ crossings }: Run, fromH: number): number | undefined =>
  crossings.find(
    ({ limit, timeH, into }) => limit === 'phHigh' && into === 'inside' && timeH > fromH,
  )?.timeH;

/** A quarter of what the water needs at an hour of a run, g of CO2. */
export const portionG = (scenario: Scenario, { trace }: Run, fromH: number): number =>
  co2DemandG(scenario, trace, fromH) / PORTIONS;

/** Portion after portion, an hour apart, each only if the reading before it is still above the limit. */
export function portionsUntilBack(fromH: number, runWith: (portions: number) => Run): number {
  let portions = 0;
  while (portions < MOST_PORTIONS && isAbove(runWith(portions), fromH + portions)) portions++;
  return portions;
}

/** Carbonated water until pH is back inside. */
export function carbonatedUntilBack(scenario: Scenario, options: SimulationOptions): ResponsePlan {
  const fromH = noticedH(scenario);
  const plain = runDrill(scenario, options);
  const gramsEach = portionG(scenario, plain, fromH);
  const plan = (portions: number) => carbonatedPlan(scenario, gramsEach, portions);
  return plan(
    gramsEach > 0
      ? portionsUntilBack(fromH, (portions) =>
          portions === 0 ? plain : runDrill(plan(portions).scenario, options),
        )
      : 0,
  );
}

/** Enriched air until pH is back inside, at most as long as was chosen. */
export function co2AirUntilBack(
  scenario: Scenario,
  { co2Ppm, co2Hours }: ResponseChoices,
  options: SimulationOptions,
): ResponsePlan {
  const fromH = noticedH(scenario);
  if (!isAbove(runDrill(scenario, options), fromH)) return co2AirPlan(scenario, co2Ppm, 0);
  const whole = runDrill(co2AirPlan(scenario, co2Ppm, co2Hours).scenario, options);
  const until = (backH(whole, fromH) ?? Infinity) - fromH;
  return co2AirPlan(scenario, co2Ppm, Math.max(SHORTEST_H, Math.min(co2Hours, until)));
}
