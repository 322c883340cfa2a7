import { expect, it } from 'vitest';
import { pco2WetUatm, ppmDryFromPco2Uatm } from '../../shared/seawater';
import { misses } from './check';
import { gasChecks } from './checks/gas';

it('gives Schmidt numbers, K0 and the wetting of air to the digits printed', () => {
  expect(gasChecks()).toHaveLength(9 * 4 + 41);
  expect(misses(gasChecks())).toEqual([]);
});

it('takes the water vapour out again', () => {
  expect(ppmDryFromPco2Uatm(pco2WetUatm(420, 25, 35), 25, 35)).toBeCloseTo(420, 10);
});
