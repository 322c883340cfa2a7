import { mean } from 'd3-array';
import { expect, it } from 'vitest';
import { patience, runsOf } from '../../laws/size';
import { twinMisses } from './misses';
import { twins, TWINS_OF_A_VARIANT, type Twins } from './twins';
import type { Variant } from './variants';

/** At full size all; else a fiftieth, which leaves the machine its twenty minutes. */
const count = runsOf(TWINS_OF_A_VARIANT, 0.2).numRuns;

/** Every variant's own law, and the fit against a straight line over all of them. */
export function holdFor(variants: readonly Variant[]): void {
  const found: Twins[] = [];

  for (const variant of variants) {
    it(
      `${variant}: none is stuck, and the interval and the fan hold`,
      () => {
        const own = twins(count, variant);
        found.push(own);
        expect(twinMisses(own)).toEqual([]);
      },
      patience * 10,
    );
  }

  it('are read nearer by the fit than by a straight line, twin by twin', () => {
    expect(found).toHaveLength(variants.length);
    // Paired, since a dozen twins say little by their medians: the proof compares those of 300.
    const nearer = mean(
      found.flatMap(({ errors, lineErrors }) =>
        errors.map((error, i) => Math.log(error / lineErrors[i]!)),
      ),
    );
    expect(nearer).toBeLessThan(0);
  });
}
