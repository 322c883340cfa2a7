import { describe, expect, it } from 'vitest';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { otherIntegratorChecks } from './checks/otherIntegrator';
import { toleranceChecks } from './checks/tolerance';
import { scenarioFiles, scenarioFromFile } from './scenarioFiles';
import { tightened } from './tightened';

describe('the integrator', () => {
  it(
    'moves no pH by 0.001, no dKH by 0.002 and no crossing by a minute when held ten times tighter',
    () => {
      const checks = toleranceChecks();
      expect(checks).toHaveLength(3 * scenarioFiles.length);
      expect(misses(checks)).toEqual([]);
    },
    patience,
  );

  it(
    'leaves few crossings out of that for grazing their limit below 0.01 pH an hour',
    () => {
      const trials = scenarioFiles.map(
        (name) => [name, tightened(scenarioFromFile(name))] as const,
      );
      const lines = trials.flatMap(([name, { grazing }]) =>
        grazing.map(({ limit, timeH, into }) => `${name}: ${limit} ${into}, ${timeH.toFixed(2)} h`),
      );
      const sharp = trials.reduce((sum, [, { crossings }]) => sum + crossings, 0);
      console.log(`Crossings too slow to time (${sharp} are not):\n${lines.join('\n')}`);
      expect(sharp).toBeGreaterThan(100);
      expect(lines.length).toBeLessThan(0.1 * sharp);
    },
    patience,
  );

  it(
    'agrees with another integrator on the same rates, hour by hour',
    () => {
      const checks = otherIntegratorChecks();
      expect(checks).toHaveLength(2 * scenarioFiles.length);
      expect(misses(checks)).toEqual([]);
    },
    patience,
  );
});
