import { describe, expect, it } from 'vitest';
import { flags } from '../../../shared/trace/columns';
import { readColumn } from '../../../shared/trace/trace';
import { phText } from '../../../src/say/texts';
import { run } from '../../../workers/engine/run';
import { patience } from '../../laws/size';
import { misses } from '../../reference/check';
import { recoveryChecks } from '../checks/recovery';
import { beyondRange, fullDumpChecks } from './checks/fullDump';
import { stopsChecks } from './checks/stops';

describe('a stuck top-off', () => {
  it(
    'brings the dKH and pH of the table when the whole reservoir goes in',
    () => {
      expect(fullDumpChecks().length).toBeGreaterThan(40);
      expect(misses(fullDumpChecks())).toEqual([]);
    },
    patience,
  );

  it('empties the reservoir past a run-time limit that fails, and past a second switch', () => {
    const plan = beyondRange()[0]!;
    const topOff = { ...plan.topOff, runLimitMinPerH: 1, runLimitMinPerDay: 3, secondSwitchL: 1 };
    const { trace } = run({ ...plan, topOff });
    expect(readColumn(trace, 'reservoir_l').at(-1)).toBe(0);
  });

  it(
    'is flagged beyond pH 9.5, and the screen says no more than that',
    () => {
      const plans = beyondRange();
      expect(plans.length).toBeGreaterThan(0);
      for (const plan of plans) {
        const { trace } = run({ ...plan, start: { ...plan.start, carbon: 'airEquilibrium' } });
        const bits = readColumn(trace, 'flags').at(-1)!;
        expect(bits & flags.highPh.bit).not.toBe(0);
        expect(phText(readColumn(trace, 'ph_nbs').at(-1)!)).toBe('>9.5');
      }
    },
    patience,
  );

  it(
    'is stopped by switch, limit, rim and an empty reservoir when arithmetic says',
    () => {
      expect(stopsChecks()).toHaveLength(6);
      expect(misses(stopsChecks())).toEqual([]);
    },
    patience,
  );
});

it(
  'aeration as a response follows the table of recoveries like aeration in the plan',
  () => {
    const checks = recoveryChecks('response');
    expect(checks).toHaveLength(291);
    expect(misses(checks)).toEqual([]);
  },
  patience,
);
