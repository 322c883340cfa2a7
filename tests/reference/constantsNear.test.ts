import { expect, it } from 'vitest';
import { SeawaterConstants } from '../../shared/seawater/constants';
import { ConstantsNearSalinity } from '../../shared/seawater/constantsNear';

const ids = Object.entries(new SeawaterConstants()).flatMap(([id, value]) =>
  typeof value === 'number' ? [id as 'kf'] : [],
);

it('every constant between the exact salinities is within 3e-7 of its own', () => {
  expect(ids.length).toBeGreaterThan(16);
  const near = new ConstantsNearSalinity();
  const [k, exact] = [new SeawaterConstants(), new SeawaterConstants()];
  for (const tempC of [12, 25, 31]) {
    // The first water at a temperature is worked out exactly.
    near.fill(k, tempC, 35);
    for (let salinity = 5.013; salinity < 45; salinity += 0.43) {
      near.fill(k, tempC, salinity);
      exact.set(tempC, salinity);
      for (const id of ids) {
        const off = Math.abs(k[id] - exact[id]) / Math.abs(exact[id]);
        expect(off, `${id} at ${tempC} °C, ${salinity}`).toBeLessThan(3e-7);
      }
    }
  }
});
