import { mean } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { twinMisses } from './twins/misses';
import { twins, TWINS_OF_A_VARIANT, type Twins } from './twins/twins';
import { plainVariants, variants, type Variant } from './twins/variants';

/** At full size all; else two thirds of a tenth, which leaves the machine its twenty minutes. */
const asked = runsOf(TWINS_OF_A_VARIANT).numRuns;
const count = asked < TWINS_OF_A_VARIANT ? Math.ceil((asked * 2) / 3) : asked;

describe('logs whose truth the fit has not seen', () => {
  const found = new Map<Variant, Twins>();

  for (const variant of variants) {
    it(
      `${variant}: none is stuck, and the interval and the fan hold`,
      () => {
        const own = twins(count, variant);
        found.set(variant, own);
        expect(twinMisses(own)).toEqual([]);
      },
      patience * 10,
    );
  }

  it('are read nearer by the fit than by a straight line, twin by twin, plain ones and all', () => {
    // Paired, since a dozen twins say little by their medians: the proof compares those of 120.
    const nearer = (names: readonly Variant[]) =>
      mean(
        names.flatMap((name) => {
          const { errors, lineErrors } = found.get(name)!;
          return errors.map((error, i) => Math.log(error / lineErrors[i]!));
        }),
      )!;
    expect(nearer(plainVariants)).toBeLessThan(0);
    expect(nearer(variants)).toBeLessThan(0);
  });
});
