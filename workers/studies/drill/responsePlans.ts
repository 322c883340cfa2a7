import { CO2_G_PER_L } from '../../../shared/events/carbonatedWater';
import { faultKinds } from '../../../shared/faults/faultKinds';
import { newResponse } from '../../../shared/scenario/newFault';
import { calendarOf } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';

/** What may be done once a failure is noticed, with how much of it. */
export type Remedy =
  | { readonly id: 'nothing' | 'stop' | 'aerate' }
  /** No portions: none was needed. */
  | { readonly id: 'carbonated'; readonly portions: number; readonly litresEach: number }
  /** No hours: none was needed. */
  | { readonly id: 'co2Air'; readonly hours: number }
  | { readonly id: 'change'; readonly percent: number };

export interface ResponsePlan {
  readonly remedy: Remedy;
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

/** When the first fault is noticed and ended, at once where it does not last: from then on something can be done. */
function noticed({ faults }: Scenario): Pick<Response, 'day' | 'hour'> {
  const { kind, day, hour, endsAfterH } = faults[0]!;
  const afterH = faultKinds[kind].lasts ? endsAfterH : 0;
  return calendarOf((day - 1) * 24 + hour + afterH);
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
    { remedy: { id: 'nothing' }, scenario: leftAlone(scenario) },
    // What was poured in is not stopped.
    ...(scenario.faults.some(({ kind }) => faultKinds[kind].lasts)
      ? [{ remedy: { id: 'stop' as const }, scenario }]
      : []),
    {
      remedy: { id: 'aerate' },
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
  remedy: { id: 'carbonated', portions, litresEach: co2GramsEach / CO2_G_PER_L },
  scenario:
    portions === 0
      ? scenario
      : withResponse(scenario, 'carbonatedWater', { co2GramsEach, portions }),
});

/** Air richer in CO2 for so long. */
export const co2AirPlan = (scenario: Scenario, co2Ppm: number, hours: number): ResponsePlan => ({
  remedy: { id: 'co2Air', hours },
  scenario: hours === 0 ? scenario : withResponse(scenario, 'co2Air', { hours, co2Ppm }),
});

/** Water changed at once, with the plan's own new water. */
export const changePlan = (
  scenario: Scenario,
  { changePercent }: ResponseChoices,
): ResponsePlan => ({
  remedy: { id: 'change', percent: changePercent },
  scenario: withResponse(scenario, 'extraChange', { percent: changePercent }),
});
