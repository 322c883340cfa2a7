import { describe, expect, it } from 'vitest';
import { readColumn } from '../../shared/trace/trace';
import { tellVerdict } from '../../src/say/verdict/verdict';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { limewaterRun, limewaterSteadyChecks } from './checks/limewaterSteady';
import { quietTank } from './quietTank';

describe('limewater alone against 1.1 dKH a day', () => {
  it(
    'settles at pH 8.64 with a kLa of 1 and at 8.35 with 3',
    () => {
      expect(limewaterSteadyChecks()).toHaveLength(4);
      expect(misses(limewaterSteadyChecks())).toEqual([]);
    },
    patience,
  );

  it(
    'finds no steady state with a kLa of 0.3: pH rises every day, and the verdict says so',
    () => {
      const trial = limewaterRun(0.3);
      const ph = readColumn(trial.trace, 'ph_nbs');
      const midnights = ph.filter((_, hour) => hour % 24 === 0);
      const rises = midnights.slice(1).map((value, day) => value - midnights[day]!);
      expect(trial.settled).toBe(false);
      expect(Math.min(...rises)).toBeGreaterThan(0.05);
      expect(ph.at(-1)).toBeGreaterThan(9.5);
      expect(tellVerdict(quietTank(), trial).details.join(' ')).toContain('no steady daily cycle');
    },
    patience,
  );
});
