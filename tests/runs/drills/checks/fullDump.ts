import { totalCalciumMolPerKg } from '../../../../shared/seawater';
import { newFault } from '../../../../shared/scenario/newFault';
import type { Scenario } from '../../../../shared/scenario/schema';
import { additives } from '../../../../shared/species/additives';
import { compile } from '../../../../workers/engine/compile';
import { Simulation } from '../../../../workers/engine/simulation';
import type { Check } from '../../../reference/check';
import {
  tableKgPerL,
  tableNbsMinusTotal,
  tableTempC,
  wetPerDry,
} from '../../../reference/doseTank';
import { readTable, type Row } from '../../../reference/table';
import { quietTank } from '../../quietTank';

const volumeL = 300;
/** The table's limewater: 40.6 meq/L. */
const gramsPerL = (0.0406 / 2) * additives.calciumHydroxide.molarMassG;
const pumpLPerH = 60;

/** A closed tank whose pump sticks on until a reservoir of p % of its volume is empty. */
function dumpTank(row: Row): Scenario {
  const reservoirL = (row.number('pct_of_tank_volume') / 100) * volumeL;
  return quietTank({
    tank: {
      volumeL,
      alkalinityDkh: row.number('start_dKH'),
      calciumMgPerL: totalCalciumMolPerKg(35) * 40.078 * 1000 * tableKgPerL,
      tempC: tableTempC,
    },
    room: { co2Ppm: row.number('start_xCO2') },
    gas: { kLaPerH: 0 },
    filter: { nitrificationPerH: 0 },
    outflows: { spareL: 100 },
    topOff: {
      ...{ reservoirL, pumpLPerH, gramsPerL, refillEveryDays: 0 },
      ...{ additive: 'calciumHydroxide', saturationPercent: 110 },
    },
    faults: [newFault('topOffOn', { day: 1, hour: 0, endsAfterH: 24 })],
  });
}

/** Above this the table's own libraries differ: there we say '>9.5' and flag it. */
const WIDE_ABOVE_PH = 9;
const LAST_PH = 9.5;

/** The whole reservoir on top of the tank: dKH and pH right after, without any air. */
export function fullDumpChecks(): Check[] {
  return readTable('limewater_dose_pct.csv')
    .filter((row) => row.text('case') === 'stuck_pump_extra_volume')
    .flatMap((row) => {
      const ppm = row.number('start_xCO2');
      const plan = compile(dumpTank(row), { pco2Uatm: wetPerDry * ppm });
      const tank = new Simulation(plan);
      tank.advanceTo(Math.ceil((row.number('pct_of_tank_volume') * volumeL) / 100 / pumpLPerH));
      const expected = row.number('pH_NBS_closed');
      const origin = {
        id: `full-dump/${row.text('start_dKH')}/${ppm}/${row.text('pct_of_tank_volume')}`,
        source: 'PyCO2SYS 1.8.3.4 (limewater_dose_pct.csv)',
        howVerified: 'computed',
      } as const;
      const dkh: Check = {
        ...{ ...origin, quantity: 'dKH after a full dump', expected: row.number('dKH_after') },
        ...{ got: tank.view.alkalinityDkh, tolerance: 0.03, unit: 'dKH' },
      };
      if (expected > LAST_PH) return [dkh];
      return [
        dkh,
        {
          ...{ ...origin, quantity: 'pH (NBS) after a full dump', expected, unit: 'pH' },
          got: tank.view.phTotal + tableNbsMinusTotal,
          tolerance: expected > WIDE_ABOVE_PH ? 0.02 : 0.01,
        },
      ];
    });
}

/** Rows of the table beyond the constants' range, as plans. */
export const beyondRange = (): Scenario[] =>
  readTable('limewater_dose_pct.csv')
    .filter(
      (row) =>
        row.text('case') === 'stuck_pump_extra_volume' && row.number('pH_NBS_closed') > LAST_PH,
    )
    .map(dumpTank);
