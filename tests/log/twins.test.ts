import { describe, expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { twinMisses } from './twins/misses';
import { twins, TWINS_OF_A_VARIANT } from './twins/twins';
import { variants } from './twins/variants';

describe('logs whose truth the fit has not seen', () => {
  for (const variant of variants) {
    it(
      `${variant}: none is stuck, the interval holds, a straight line is no nearer`,
      () => {
        const found = twins(runsOf(TWINS_OF_A_VARIANT).numRuns, variant);
        expect(twinMisses(found)).toEqual([]);
      },
      patience * 10,
    );
  }
});
