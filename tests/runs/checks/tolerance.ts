import type { Check } from '../../reference/check';
import { scenarioFiles, scenarioFromFile } from '../scenarioFiles';
import { tightened } from '../tightened';

/** What a tenth of the integrator's tolerance moves in every scenario that ships. */
export const toleranceChecks = (): Check[] =>
  scenarioFiles.flatMap((name) => {
    const { ph, alkalinityDkh, moved } = tightened(scenarioFromFile(name));
    const origin = {
      id: `tolerance/${name}`,
      source: 'the same run with a tenth of the tolerance',
      howVerified: 'computed',
      expected: 0,
    } as const;
    return [
      { ...origin, quantity: 'hourly pH', got: ph, tolerance: 0.001, unit: 'pH' },
      {
        ...origin,
        quantity: 'hourly alkalinity',
        got: alkalinityDkh,
        tolerance: 0.002,
        unit: 'dKH',
      },
      {
        ...origin,
        quantity: 'limit crossings that move by a minute',
        got: moved.length,
        tolerance: 0,
        unit: 'crossings',
      },
    ];
  });
