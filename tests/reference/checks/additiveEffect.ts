import type { Check } from '../check';
import {
  closed,
  startWater,
  tableNbsMinusTotal,
  umolPerKgFromTableDkh,
  withAir,
} from '../doseTank';
import { readTable } from '../table';

/** DIC and calcium that come with one equivalent of alkalinity, in mol. */
const perEquivalent: Record<string, { dic: number; calcium: number }> = {
  NaOH: { dic: 0, calcium: 0 },
  'Ca(OH)2': { dic: 0, calcium: 0.5 },
  Na2CO3: { dic: 0.5, calcium: 0 },
  NaHCO3: { dic: 1, calcium: 0 },
};

export function additiveEffectChecks(): Check[] {
  return readTable('additive_closed_effect.csv').flatMap((row) => {
    const additive = perEquivalent[row.text('additive')];
    if (!additive) throw new Error(`unknown additive ${row.text('additive')}`);
    const ppmDry = row.number('start_xCO2');
    const start = startWater(row.number('start_dKH'), ppmDry);
    const dose = umolPerKgFromTableDkh(row.number('dose_dKH'));
    const water = {
      ...start,
      alkalinityUmolPerKg: start.alkalinityUmolPerKg + dose,
      dicUmolPerKg: start.dicUmolPerKg + dose * additive.dic,
      calciumUmolPerKg: start.calciumUmolPerKg + dose * additive.calcium,
    };
    const before = closed(start);
    const after = closed(water);
    const aired = withAir(water, ppmDry);
    const place = ['start_dKH', 'start_xCO2', 'additive', 'dose_dKH'];
    const origin = {
      id: `additive/${place.map((column) => row.text(column)).join('/')}`,
      source: 'PyCO2SYS 1.8.3.4 (additive_closed_effect.csv)',
      howVerified: 'computed',
    } as const;
    const rows: [column: string, got: number, tolerance: number, unit: string][] = [
      ['start_pH_NBS', before.phTotal + tableNbsMinusTotal, 0.006, 'pH'],
      ['pH_NBS_after_closed', after.phTotal + tableNbsMinusTotal, 0.006, 'pH'],
      ['dpH', after.phTotal - before.phTotal, 0.006, 'pH'],
      ['pH_NBS_after_air_equil_same_xCO2', aired.phTotal + tableNbsMinusTotal, 0.006, 'pH'],
      ['Omega_before', before.omegaAragonite, row.number('Omega_before') * 0.005, '-'],
      ['Omega_after', after.omegaAragonite, row.number('Omega_after') * 0.005, '-'],
      ['dDIC_from_air_umol_kg', aired.dicUmolPerKg - water.dicUmolPerKg, 1, 'µmol/kg'],
    ];
    return rows.map(([quantity, got, tolerance, unit]) => ({
      ...{ ...origin, quantity, expected: row.number(quantity), got, tolerance, unit },
    }));
  });
}
