import fc from 'fast-check';
import { expect, it } from 'vitest';
import { saturationFactor, saturationSlope } from '../../../shared/processes/growthLaw';
import { refugium } from '../../../shared/processes/refugium';
import { scarcity, scarcitySlope } from '../../../shared/processes/scarcity';
import { temperatureFactor, temperatureSlope } from '../../../shared/processes/temperatureBell';
import type { Motion } from '../../../shared/processes/motion';
import { onlyView } from './onlyView';

const SIDE = 1e-6;

/** A slope, and the quotient either side of a point: at a bend these differ, and nothing is asked. */
function meets(of: (x: number) => number, slope: (x: number) => number, x: number): void {
  const before = (of(x) - of(x - SIDE)) / SIDE;
  const after = (of(x + SIDE) - of(x)) / SIDE;
  fc.pre(Math.abs(before - after) < 1e-3);
  expect(Math.abs(slope(x) - before)).toBeLessThan(2e-3);
}

it('growth’s slope by saturation is that of its law, at any saturation it may refer to', () => {
  const anyReference = fc.record({
    omegaReference: fc.double({ min: 0.5, max: 8, noNaN: true }),
    stopOmega: fc.double({ min: -0.2, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 9, noNaN: true }),
      anyReference,
      fc.boolean(),
      (omega, { omegaReference, stopOmega }, proportional) => {
        const reference = { omegaReference, stopOmega, otherUseEqPerDay: 0 };
        meets(
          (x) => saturationFactor(x, reference, proportional),
          (x) => saturationSlope(x, reference, proportional),
          omega,
        );
      },
    ),
  );
});

it('and so are those by temperature and by what runs out', () => {
  const anyC = fc.double({ min: 10, max: 40, noNaN: true });
  fc.assert(
    fc.property(anyC, anyC, (tempC, startC) => {
      meets(
        (x) => temperatureFactor(x, startC),
        (x) => temperatureSlope(x, startC),
        tempC,
      );
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 3, noNaN: true }), (share) => {
      meets(
        (x) => scarcity(x, 1),
        (x) => scarcitySlope(x, 1),
        share,
      );
    }),
  );
});

it('and that of a refugium’s light, as it comes up and goes out', () => {
  const lit = { molPerH: 1, fromClockHour: 20, hours: 8, startClockHour: 10 };
  const still = { dicMolPerKg: 0 } as Motion;
  const at = (timeH: number) => onlyView({ timeH });
  // Of 20:15, 4:10, the midst of the night and noon.
  const drifts = [10.25, 18.2, 14, 2].map((timeH) => {
    const drift = refugium.drift!(at(timeH), still, lit, { molPerH: 0, driftMolPerH2: 0 });
    const before = (refugium.rate(at(timeH), lit) - refugium.rate(at(timeH - SIDE), lit)) / SIDE;
    expect(drift).toBeCloseTo(before, 4);
    return Math.round(drift);
  });
  expect(drifts).toEqual([1, -1, 0, 0]);
});
