import {
  atomicMassGPerMol,
  meqPerLFromDkh,
  molarMassGPerMol,
  type Element,
} from '../../../shared/seawater';
import { additives, oxidisedMeqPerG } from '../../../shared/species/additives';
import type { Check } from '../check';
import { readTable } from '../table';
import { additiveOf } from './additiveOf';

/** Composition, and the alkalinity it brings (acetate and formate: once oxidised). */
const compounds: Record<string, { of: Partial<Record<Element, number>>; eqPerMol?: number }> = {
  CaOH2: { of: { Ca: 1, O: 2, H: 2 }, eqPerMol: 2 },
  CaO: { of: { Ca: 1, O: 1 }, eqPerMol: 2 },
  Na2CO3: { of: { Na: 2, C: 1, O: 3 }, eqPerMol: 2 },
  NaHCO3: { of: { Na: 1, H: 1, C: 1, O: 3 }, eqPerMol: 1 },
  NaOH: { of: { Na: 1, O: 1, H: 1 }, eqPerMol: 1 },
  CaCl2_2H2O: { of: { Ca: 1, Cl: 2, H: 4, O: 2 } },
  CaCl2: { of: { Ca: 1, Cl: 2 } },
  MgCl2_6H2O: { of: { Mg: 1, Cl: 2, H: 12, O: 6 } },
  MgSO4_7H2O: { of: { Mg: 1, S: 1, O: 11, H: 14 } },
  MgCl2: { of: { Mg: 1, Cl: 2 } },
  CaAc2: { of: { Ca: 1, C: 4, H: 6, O: 4 }, eqPerMol: 2 },
  CaFo2: { of: { Ca: 1, C: 2, H: 2, O: 4 }, eqPerMol: 2 },
  CaCO3: { of: { Ca: 1, C: 1, O: 3 }, eqPerMol: 2 },
  KHCO3: { of: { K: 1, H: 1, C: 1, O: 3 }, eqPerMol: 1 },
};

/** Half of the last digit printed, and the part in 100 000 that tables of atomic weights differ by. */
export function stoichiometryChecks(): Check[] {
  return readTable('additives.csv').flatMap((row) => {
    const compound = compounds[row.text('substance')];
    if (!compound) throw new Error(`unknown substance ${row.text('substance')}`);
    const additive = additiveOf[row.text('substance')];
    const gPerMol = additive ? additives[additive].molarMassG : molarMassGPerMol(compound.of);
    const meqPerG = additive
      ? oxidisedMeqPerG(additive)
      : ((compound.eqPerMol ?? NaN) * 1000) / gPerMol;
    const metal = compound.of.Mg ? 'Mg' : 'Ca';
    const metalMgPerG = ((compound.of[metal] ?? NaN) * atomicMassGPerMol[metal] * 1000) / gPerMol;
    const columns: [column: string, got: number, halfDigit: number, unit: string][] = [
      ['molar_mass_g_mol', gPerMol, 5e-4, 'g/mol'],
      ['meq_per_g', meqPerG, 5e-5, 'meq/g'],
      ['g_to_raise_100L_by_1dKH', (meqPerLFromDkh(1) * 100) / meqPerG, 5e-4, 'g'],
      ['Ca_or_Mg_mg_per_g', metalMgPerG, 5e-3, 'mg/g'],
      ['g_to_raise_100L_Ca_or_Mg_by_10ppm', 1000 / metalMgPerG, 5e-4, 'g'],
    ];
    return columns
      .filter(([column]) => row.has(column))
      .map(([quantity, got, halfDigit, unit]): Check => {
        const expected = row.number(quantity);
        return {
          id: `stoichiometry/${row.text('substance')}`,
          quantity,
          source: 'atomic weights (additives.csv)',
          howVerified: 'computed',
          expected,
          got,
          tolerance: halfDigit + expected * 1e-5,
          unit,
        };
      });
  });
}
