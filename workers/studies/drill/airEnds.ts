import { breathing, respirationDoubt } from '../../../shared/processes/respirationDoubt';
import type { Scenario } from '../../../shared/scenario/schema';

type Fault = Scenario['faults'][number];

export const isPowerCut = ({ kind }: Fault): boolean => kind === 'powerCut';

/** A power cut under a closed lid: not even a still surface lets anything in, and more is breathed. */
export const shortOfAir = (scenario: Scenario): Scenario =>
  breathing(
    {
      ...scenario,
      faults: scenario.faults.map((fault) =>
        isPowerCut(fault) ? { ...fault, gasPercent: 0 } : fault,
      ),
    },
    1 + respirationDoubt(scenario),
  );

/** The other end: the gas exchange that is set, and less is breathed. */
export const easedAir = (scenario: Scenario): Scenario =>
  breathing(scenario, 1 / (1 + respirationDoubt(scenario)));
