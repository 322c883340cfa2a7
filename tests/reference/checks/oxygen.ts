import { oxygenKLaPerH, oxygenSaturationUmolPerKg } from '../../../shared/seawater/oxygen';
import { seawaterDensityKgPerM3 } from '../../../shared/seawater/density';
import type { Check } from '../check';

const O2_G_PER_MOL = 31.998;

/** Oxygen in water under moist air, as published code gives it with the corrected equation 8. */
const printed: readonly [tempC: number, salinityPractical: number, umolPerKg: number][] = [
  [10, 35, 274.61],
  [25, 35, 206.788],
];

/** Fresh water at 1 atm, mg/L: the handbook table that is made from Benson & Krause. */
const handbook: readonly [tempC: number, mgPerL: number][] = [
  [0, 14.62],
  [5, 12.77],
  [10, 11.29],
  [15, 10.08],
  [20, 9.09],
  [25, 8.26],
  [30, 7.56],
];

/** Benson & Krause 1984, equation for µmol/kg, which the fit was made to (coefficients from memory). */
function bensonKrauseUmolPerKg(tempC: number, salinityPractical: number): number {
  const t = tempC + 273.15;
  const fresh =
    -135.29996 + 1.572288e5 / t - 6.637149e7 / t ** 2 + 1.243678e10 / t ** 3 - 8.621061e11 / t ** 4;
  return Math.exp(fresh - salinityPractical * (0.020573 - 12.142 / t + 2363.1 / t ** 2));
}

export function oxygenChecks(): Check[] {
  const values = printed.map(([tempC, s, expected]): Check => ({
    id: `oxygen/${tempC}C-S${s}`,
    quantity: 'oxygen in balance with moist air',
    source: 'Garcia & Gordon 1992, corrected equation 8, check value of published code',
    howVerified: 'computed',
    ...{ expected, got: oxygenSaturationUmolPerKg(tempC, s), tolerance: 5e-4, unit: 'µmol/kg' },
  }));
  const fresh = handbook.map(([tempC, expected]): Check => {
    const kgPerL = seawaterDensityKgPerM3({ tempC, salinityPractical: 0 }) / 1000;
    return {
      id: `oxygen/fresh-${tempC}C`,
      quantity: 'oxygen in fresh water',
      source: 'handbook table after Benson & Krause 1984',
      howVerified: 'from memory',
      expected,
      got: (oxygenSaturationUmolPerKg(tempC, 0) * O2_G_PER_MOL * kgPerL) / 1000,
      // Half of the last digit beside 0.1 % of it.
      tolerance: 0.005 + 0.001 * expected,
      unit: 'mg/L',
    };
  });
  const fitted = [5, 15, 20, 25, 30, 35].flatMap((tempC) =>
    [10, 20, 30, 35, 40].map((s): Check => {
      const expected = bensonKrauseUmolPerKg(tempC, s);
      return {
        id: `oxygen/fit-${tempC}C-S${s}`,
        quantity: 'oxygen against the equation that was fitted',
        source: 'Benson & Krause 1984',
        howVerified: 'from memory',
        ...{ expected, got: oxygenSaturationUmolPerKg(tempC, s) },
        ...{ tolerance: 0.001 * expected, unit: 'µmol/kg' },
      };
    }),
  );
  const transfer: Check = {
    id: 'oxygen/transfer-25C',
    quantity: 'gas exchange of O2 over that of CO2',
    source: 'Schmidt numbers of Wanninkhof 2014',
    howVerified: 'computed',
    ...{ expected: 1.084, got: oxygenKLaPerH(1, 25), tolerance: 5e-4, unit: '-' },
  };
  return [...values, ...fresh, ...fitted, transfer];
}
