import { densityKgPerM3, dkhFromMeqPerL } from '../../../shared/seawater';
import type { Check } from '../check';
import {
  closed,
  startWater,
  tableKgPerL,
  tableNbsMinusTotal,
  tableSalinity,
  tableTempC,
  withAir,
  type DosedWater,
} from '../doseTank';
import { readTable, type Row } from '../table';

const limewaterMeqPerL = 40.6;
const limewaterCalciumMmolPerL = 20.3;

interface Dosed extends DosedWater {
  kgPerL: number;
}

/** Limewater for p % of the volume: in place of evaporated water, or on top of it. */
function dosed(row: Row): Dosed {
  const start = startWater(row.number('start_dKH'), row.number('start_xCO2'));
  const share = row.number('pct_of_tank_volume') / 100;
  if (row.text('case') === 'replaces_evaporation') return mixed(start, share, 1, tableKgPerL);
  const tankKgPerL = densityKgPerM3(tableTempC, tableSalinity) / 1000;
  const limewaterKgPerL = densityKgPerM3(tableTempC, 0) / 1000;
  return mixed(start, share, tankKgPerL / (tankKgPerL + share * limewaterKgPerL), tankKgPerL);
}

function mixed(start: DosedWater, share: number, dilution: number, tankKgPerL: number): Dosed {
  const salinityPractical = start.salinityPractical * dilution;
  const addedPerKg = ((share * 1000) / tankKgPerL) * dilution;
  return {
    alkalinityUmolPerKg: start.alkalinityUmolPerKg * dilution + addedPerKg * limewaterMeqPerL,
    dicUmolPerKg: start.dicUmolPerKg * dilution,
    calciumUmolPerKg: start.calciumUmolPerKg * dilution + addedPerKg * limewaterCalciumMmolPerL,
    salinityPractical,
    kgPerL: dilution === 1 ? tableKgPerL : densityKgPerM3(tableTempC, salinityPractical) / 1000,
  };
}

export function limewaterDoseChecks(): Check[] {
  return readTable('limewater_dose_pct.csv').flatMap((row) => {
    const water = dosed(row);
    const closedWater = closed(water);
    const airedWater = withAir(water, row.number('start_xCO2'));
    const place = ['case', 'start_dKH', 'start_xCO2', 'pct_of_tank_volume'];
    const origin = {
      id: `limewater/${place.map((column) => row.text(column)).join('/')}`,
      source: 'PyCO2SYS 1.8.3.4 (limewater_dose_pct.csv)',
      howVerified: 'computed',
    } as const;
    const dkh = dkhFromMeqPerL((water.alkalinityUmolPerKg * water.kgPerL) / 1000);
    const rows: [column: string, got: number, tolerance: number, unit: string][] = [
      ['S_after', water.salinityPractical, 0.005, '-'],
      ['dKH_after', dkh, 0.02, 'dKH'],
      ['pH_total_closed', closedWater.phTotal, 0.006, 'pH'],
      ['pH_NBS_closed', closedWater.phTotal + tableNbsMinusTotal, 0.006, 'pH'],
      ['pH_NBS_after_equil_same_air', airedWater.phTotal + tableNbsMinusTotal, 0.006, 'pH'],
      ['OmegaA_closed', closedWater.omegaAragonite, row.number('OmegaA_closed') * 0.005, '-'],
      [
        'OmegaA_after_equil',
        airedWater.omegaAragonite,
        row.number('OmegaA_after_equil') * 0.005,
        '-',
      ],
    ];
    return rows.map(([quantity, got, tolerance, unit]) => ({
      ...{ ...origin, quantity, expected: row.number(quantity), got, tolerance, unit },
    }));
  });
}
