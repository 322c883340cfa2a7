import { atomicMassGPerMol, dkhFromMeqPerL } from '../../../../shared/seawater';
import type { Check } from '../../../reference/check';
import { changeOver, equivalents, mol, onlyTank } from '../onlyTank';

const ions = [
  ['Ca', 'calcium', 7.05, 0.01],
  ['Sr', 'strontium', 0.14, 0.005],
  ['Mg', 'magnesium', 0.017, 0.0005],
] as const;

/** Corals alone for a day, with 4 mmol of magnesium and 9 of strontium to the mole of calcium. */
export function skeletonChecks(): Check[] {
  const tank = onlyTank({
    corals: { useDkhPerDay: 1, skeletonMgPerCa: 4, skeletonSrPerCa: 9 },
    days: 1,
  });
  const fall = changeOver(tank, 24, {
    dkh: (t) => dkhFromMeqPerL(equivalents(t) * 1000),
    ...{ Ca: (t) => mol(t, 'Ca'), Sr: (t) => mol(t, 'Sr'), Mg: (t) => mol(t, 'Mg') },
  });
  return ions.map(([ion, name, expected, tolerance]) => ({
    id: `skeleton/${ion}`,
    quantity: `${name} laid down with each dKH`,
    source: 'molar masses; 4 mmol Mg and 9 mmol Sr per mole of Ca (from memory)',
    howVerified: 'computed',
    ...{
      expected,
      got: (fall[ion] * atomicMassGPerMol[ion] * 1000) / fall.dkh,
      tolerance,
      unit: 'mg/L per dKH',
    },
  }));
}
