import fc from 'fast-check';
import { expect, it } from 'vitest';
import { holdingValue } from '../../workers/studies/turn/holdingValue';

const NEAR_DKH = 0.015;

/** How far above the target a dose holds the water: hardly higher while corals starve, then evenly, then less. */
const anyAnswer = fc.record({
  most: fc.constant(28_800),
  from: fc.noBias(fc.double({ min: 0.5, max: 2000, noNaN: true })),
  holds: fc.noBias(fc.double({ min: 1, max: 4000, noNaN: true })),
  dkhPerUnit: fc.noBias(fc.double({ min: 0.001, max: 0.5, noNaN: true })),
  starvesAtDkh: fc.noBias(fc.double({ min: -4, max: -0.3, noNaN: true })),
  flattens: fc.noBias(fc.double({ min: 0, max: 0.3, noNaN: true })),
});

it('a dose that holds the target is found wherever there is one, in two dozen runs', () => {
  let most = 0;
  fc.assert(
    fc.property(anyAnswer, ({ holds, dkhPerUnit, starvesAtDkh, flattens, ...lever }) => {
      let runs = 0;
      const offDkh = (x: number): number => {
        runs++;
        const even = dkhPerUnit * (x - holds);
        const bent = even > 0 ? even / (1 + flattens * even) : even;
        return bent > starvesAtDkh ? bent : starvesAtDkh + 1e-5 * (bent - starvesAtDkh);
      };
      const found = holdingValue(lever, 8.5, offDkh);
      most = Math.max(most, runs);
      expect(found.kind).toBe('holds');
      if (found.kind !== 'holds') return;
      expect(Math.abs(offDkh(found.value))).toBeLessThanOrEqual(NEAR_DKH);
      expect(found.dkhPerUnit).toBeGreaterThan(0);
    }),
    { numRuns: 1000 },
  );
  expect(most).toBeLessThanOrEqual(26);
});

it('where none holds it, where it comes nearest is said', () => {
  // As limewater, of which no more dissolves.
  const full = (x: number) => Math.min(x, 1.5) - 2;
  const most = holdingValue({ from: 1, most: 2 }, 8.5, full);
  expect(most).toMatchObject({ kind: 'cannot', restsDkh: 8 });
  expect(most.value).toBeGreaterThanOrEqual(1.5);
  const tooMuch = (x: number) => 1 + x;
  expect(holdingValue({ from: 1, most: 2 }, 8.5, tooMuch)).toMatchObject({
    ...{ kind: 'cannot', restsDkh: 9.5, value: 0 },
  });
});

it('a dose that holds the target as it is stays what it is, to the digit', () => {
  const holdsAt79 = (x: number) => 0.01 * (x - 79);
  expect(holdingValue({ from: 80, most: 28_800 }, 8.5, holdsAt79).value).toBe(80);
});
