import { dkhFromMeqPerL, molarMassGPerMol } from '../../../../shared/seawater';
import { additives } from '../../../../shared/species/additives';
import type { Check } from '../../../reference/check';
import { changeOver, equivalents, mol, onlyTank } from '../onlyTank';

const SALT_G = molarMassGPerMol({ Na: 1, Cl: 1 });

/** A tenth of a mole of each part of a two-part pair, poured in at hour 1. */
export function tableSaltChecks(): Check[] {
  const parts = (['sodiumCarbonate', 'calciumChlorideDihydrate'] as const).map((additive) => ({
    ...{ day: 1, hour: 1, additive, grams: 0.1 * additives[additive].molarMassG },
  }));
  const change = changeOver(onlyTank({ additions: parts, days: 1 }), 2, {
    dkh: (t) => dkhFromMeqPerL(equivalents(t) * 1000),
    ...{ Na: (t) => mol(t, 'Na'), Cl: (t) => mol(t, 'Cl') },
  });
  // Whichever of the two is there in the smaller number makes table salt.
  const saltMol = Math.min(change.Na, change.Cl);
  return [
    {
      id: 'table-salt/two-part',
      quantity: 'sodium chloride that a two-part pair leaves for each dKH',
      source: 'one mole of NaCl for each equivalent',
      howVerified: 'computed',
      ...{ expected: 20.8, got: (saltMol * SALT_G * 1000) / change.dkh },
      ...{ tolerance: 0.05, unit: 'mg/L per dKH' },
    },
  ];
}
