import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import { CO2_G_PER_L } from '../../../shared/events/carbonatedWater';
import { newResponse } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';

export interface ResponsePlan {
  readonly id: string;
  readonly title: string;
  readonly scenario: Scenario;
}

/** What the keeper chooses for the responses. */
export interface ResponseChoices {
  readonly kLaPerH: number;
  readonly co2Ppm: number;
  readonly co2Hours: number;
  readonly changePercent: number;
}

type Response = Scenario['responses'][number];

/** When the first fault is noticed and ended: from then on something can be done. */
function noticed({ faults }: Scenario): Pick<Response, 'day' | 'hour'> {
  const first = faults[0]!;
  const hour = first.hour + first.endsAfterH;
  return { day: first.day + Math.floor(hour / 24), hour: hour % 24 };
}

export const withResponse = (
  scenario: Scenario,
  kind: Response['kind'],
  own: Partial<Response>,
): Scenario => ({
  ...scenario,
  responses: [newResponse(kind, { ...noticed(scenario), ...own })],
});

/** The same failure with nothing done at all, not even ended. */
const leftAlone = (scenario: Scenario): Scenario => ({
  ...scenario,
  faults: scenario.faults.map((fault) => ({ ...fault, endsAfterH: scenario.days * 24 })),
});

/** What needs no measuring meanwhile: each on its own, and nothing at all. */
export function plainResponses(
  scenario: Scenario,
  { kLaPerH }: ResponseChoices,
): readonly ResponsePlan[] {
  return [
    { id: 'nothing', title: say.responses.nothing, scenario: leftAlone(scenario) },
    { id: 'stop', title: say.responses.stop, scenario },
    {
      id: 'aerate',
      title: say.responses.aerate,
      scenario: withResponse(scenario, 'aerate', { hours: 72, kLaPerH }),
    },
  ];
}

/** Carbonated water in so many portions, an hour apart. */
export const carbonatedPlan = (
  scenario: Scenario,
  co2GramsEach: number,
  portions: number,
): ResponsePlan => ({
  id: 'carbonated',
  title:
    portions === 0
      ? say.responses.carbonatedNotNeeded
      : say.responses.carbonated(String(portions), figure(co2GramsEach / CO2_G_PER_L, 2)),
  scenario:
    portions === 0
      ? scenario
      : withResponse(scenario, 'carbonatedWater', { co2GramsEach, portions }),
});

/** Air richer in CO2 for so long. */
export const co2AirPlan = (scenario: Scenario, co2Ppm: number, hours: number): ResponsePlan => ({
  id: 'co2Air',
  title: hours === 0 ? say.responses.co2AirNotNeeded : say.responses.co2Air(figure(hours, 1)),
  scenario: hours === 0 ? scenario : withResponse(scenario, 'co2Air', { hours, co2Ppm }),
});

/** Water changed at once, with the plan's own new water. */
export const changePlan = (
  scenario: Scenario,
  { changePercent }: ResponseChoices,
): ResponsePlan => ({
  id: 'change',
  title: say.responses.change(figure(changePercent)),
  scenario: withResponse(scenario, 'extraChange', { percent: changePercent }),
});
