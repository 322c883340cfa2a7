import { median } from 'd3-array';
import { expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { drawn, resting, type Found } from './twins/drawn';

/** An interval of 95 % holds between these; with so few tanks two standard errors more or less. */
const [LEAST, MOST] = [0.92, 0.98];
const K = 1.96;
const { numRuns, seed } = runsOf(400);
const strays = (share: number) => 2 * Math.sqrt((share * (1 - share)) / numRuns);

const heldOf = (all: readonly Found[]) =>
  all.filter(({ error, sigma }) => Math.abs(error) <= K * sigma).length / numRuns;

it(
  'the interval of the use holds 95 % where the truth is drawn from what the fit thinks possible, and no less where nothing wanders',
  () => {
    const draws = (of: typeof drawn) => Array.from({ length: numRuns }, (_, i) => of(i, seed));
    const [all, still] = [draws(drawn), draws(resting)];
    expect(heldOf(all)).toBeGreaterThan(LEAST - strays(LEAST));
    expect(heldOf(all)).toBeLessThan(MOST + strays(MOST));
    expect(heldOf(still)).toBeGreaterThan(LEAST - strays(LEAST));
    // A line through the same readings is farther off, and does not know it.
    for (const found of [all, still]) {
      expect(median(found, ({ error }) => Math.abs(error))!).toBeLessThan(
        median(found, ({ lineError }) => Math.abs(lineError))!,
      );
    }
  },
  patience * 10,
);
