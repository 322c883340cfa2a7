import { expect, it } from 'vitest';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { recoveryChecks } from './checks/recovery';

it(
  'follows the pH of 34 dosed tanks for up to five days within 0.006, at every time',
  () => {
    const checks = recoveryChecks();
    expect(checks).toHaveLength(291);
    expect(misses(checks)).toEqual([]);
  },
  patience,
);
