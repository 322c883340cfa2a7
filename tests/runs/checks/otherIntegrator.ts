import type { Check } from '../../reference/check';
import { bothIntegrators, withoutSwitches, type Hour } from '../otherIntegrator';
import { scenarioFiles, scenarioFromFile } from '../scenarioFiles';

const measures = [
  { quantity: 'hourly pH', of: (hour: Hour) => hour.phNbs, tolerance: 0.001, unit: 'pH' },
  {
    quantity: 'hourly alkalinity',
    of: (hour: Hour) => hour.alkalinityDkh,
    tolerance: 0.002,
    unit: 'dKH',
  },
];

/** The same rates handed to another integrator: the hour at which the two differ most. */
export const otherIntegratorChecks = (): Check[] =>
  scenarioFiles.flatMap((name) => {
    const hours = bothIntegrators(withoutSwitches(scenarioFromFile(name)));
    return measures.map(({ quantity, of, tolerance, unit }): Check => {
      const gap = (hour: (typeof hours)[number]) => Math.abs(of(hour.ours) - of(hour.theirs));
      const worst = hours.reduce((a, b) => (gap(b) > gap(a) ? b : a));
      return {
        id: `other-integrator/${name}`,
        quantity,
        source: 'odex 2.0.4: extrapolation after Hairer & Wanner, tolerance 1e-11',
        howVerified: 'computed',
        expected: of(worst.theirs),
        got: of(worst.ours),
        tolerance,
        unit,
      };
    });
  });
