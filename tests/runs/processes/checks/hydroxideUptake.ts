import { meqPerLFromDkh } from '../../../../shared/seawater';
import { additives } from '../../../../shared/species/additives';
import type { Check } from '../../../reference/check';
import { changeOver, equivalents, mol, onlyTank } from '../onlyTank';

const volumeL = 300;

/** CO2 that a tank takes from the air for each equivalent of hydroxide, back in balance with it. */
function uptake(additive: 'sodiumHydroxide' | 'calciumHydroxide', dkh: number): number {
  const eqPerMol = additive === 'sodiumHydroxide' ? 1 : 2;
  const molDosed = (meqPerLFromDkh(dkh) * volumeL) / 1000 / eqPerMol;
  const tank = onlyTank({
    days: 20,
    tank: { volumeL, alkalinityDkh: 8 },
    gas: { kLaPerH: 10, enhancement: 'off' },
    additions: [{ day: 1, hour: 1, additive, grams: molDosed * additives[additive].molarMassG }],
  });
  const change = changeOver(tank, 480, { eq: equivalents, dic: (t) => mol(t, 'DIC') });
  return change.dic / change.eq;
}

const doses = [
  ['sodiumHydroxide', 1],
  ['calciumHydroxide', 1],
  ['calciumHydroxide', 3.42],
] as const;

export const hydroxideUptakeChecks = (): Check[] =>
  doses.flatMap(([additive, dkh]) => {
    const got = uptake(additive, dkh);
    const origin = {
      id: `uptake/${additive}/${dkh} dKH`,
      quantity: 'CO2 taken up for each equivalent of hydroxide',
      ...{ got, unit: 'mol/eq' },
    };
    return [
      {
        ...origin,
        source: 'Ringham et al. 2024: between 0.7 and 0.9',
        howVerified: 'read',
        ...{ expected: 0.8, tolerance: 0.1 },
      },
      {
        ...origin,
        source: 'PyCO2SYS 1.8.3.4: 8 dKH, 420 ppm, S 35, 25 °C',
        howVerified: 'computed',
        ...{ expected: 0.79, tolerance: 0.01 },
      },
    ] satisfies Check[];
  });
