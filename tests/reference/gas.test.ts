import { expect, it } from 'vitest';
import { pco2WetUatm, ppmDryFromPco2Uatm } from '../../shared/seawater';
import { co2Enhancement, Film } from '../../shared/seawater/enhancement';
import { misses } from './check';
import { gasChecks } from './checks/gas';

it('gives Schmidt numbers, K0 and the wetting of air to the digits printed', () => {
  expect(gasChecks()).toHaveLength(9 * 4 + 41);
  expect(misses(gasChecks())).toEqual([]);
});

it('takes the water vapour out again', () => {
  expect(ppmDryFromPco2Uatm(pco2WetUatm(420, 25, 35), 25, 35)).toBeCloseTo(420, 10);
});

it('leaves no water so still that its film gives no number', () => {
  const water = { k1: 1e-6, k2: 8e-10, kw: 5e-14 };
  const film = new Film().at(25);
  for (const transferMPerH of [1e-324 * 5, 1e-300, 1e-100, 1e-9, 0.1, 10]) {
    const found = co2Enhancement(water, 1e-8, film, transferMPerH, {
      ...{ times: NaN, timesPerLnH: NaN, timesPerLnTransfer: NaN },
    });
    // With nothing stirred the reactions alone carry what moves: as many times as there is carbon beyond CO2.
    expect(found.times).toBeGreaterThanOrEqual(1);
    expect(Object.values(found).every(Number.isFinite)).toBe(true);
  }
});
