import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import { newResponse } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';
import { molarMassGPerMol } from '../../../shared/seawater/atomicMasses';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';

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

/**
 * Carbon dioxide that brings a closed water back to its starting pH after so much hydroxide:
 * 0.896 mol for each equivalent, by the carbonate system at S 35 and 25 °C.
 */
const MOL_PER_EQ = 0.896;
const CO2_G_PER_MOL = molarMassGPerMol({ C: 1, O: 2 });
const PORTIONS = 4;

/** A quarter of the demand each hour: there is time to measure between two portions. */
export function co2GramsEach({ tank }: Scenario, riseDkh: number): number {
  const eq = (riseDkh * meqPerLPerDkh * tank.volumeL) / 1000;
  return (Math.max(0, eq) * MOL_PER_EQ * CO2_G_PER_MOL) / PORTIONS;
}

/** What may be done once the fault is noticed, each on its own, and nothing at all. */
export function responsePlans(
  scenario: Scenario,
  choices: ResponseChoices,
  riseDkh: number,
): readonly ResponsePlan[] {
  const first = scenario.faults[0]!;
  const noticed = first.hour + first.hours;
  const when = { day: first.day + Math.floor(noticed / 24), hour: noticed % 24 };
  const stopped: Scenario = { ...scenario, responses: [] };
  const forever = scenario.faults.map((fault) => ({ ...fault, hours: scenario.days * 24 }));
  const withResponse = (response: Scenario['responses'][number]): Scenario => ({
    ...stopped,
    responses: [response],
  });
  const { kLaPerH, co2Ppm, co2Hours, changePercent } = choices;
  return [
    { id: 'nothing', title: say.responses.nothing, scenario: { ...stopped, faults: forever } },
    { id: 'stop', title: say.responses.stop, scenario: stopped },
    {
      id: 'aerate',
      title: say.responses.aerate,
      scenario: withResponse(newResponse('aerate', { ...when, hours: 72, kLaPerH })),
    },
    {
      id: 'carbonated',
      title: say.responses.carbonated,
      scenario: withResponse(
        newResponse('carbonatedWater', {
          ...when,
          co2GramsEach: co2GramsEach(scenario, riseDkh),
          portions: PORTIONS,
        }),
      ),
    },
    {
      id: 'co2Air',
      title: say.responses.co2Air,
      scenario: withResponse(newResponse('co2Air', { ...when, hours: co2Hours, co2Ppm })),
    },
    {
      id: 'change',
      title: say.responses.change(figure(changePercent)),
      scenario: withResponse(newResponse('extraChange', { ...when, percent: changePercent })),
    },
  ];
}
