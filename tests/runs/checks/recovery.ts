import { newResponse } from '../../../shared/scenario/newFault';
import { additives } from '../../../shared/species/additives';
import { compile } from '../../../workers/engine/compile';
import { Simulation } from '../../../workers/engine/simulation';
import type { Check } from '../../reference/check';
import { tableKgPerL, tableNbsMinusTotal, tableTempC, wetPerDry } from '../../reference/doseTank';
import { readTable, type Row } from '../../reference/table';
import { totalCalciumMolPerKg } from '../../../shared/seawater';
import { quietTank } from '../quietTank';

const volumeL = 300;
const limewaterMolPerL = 0.0203;
/** The tables start every tank in balance with this air, and then change the air. */
const startPpm = 420;

/** One tank of the table: a closed dose of lime at hour 0, then only air. */
function dosedTank(row: Row, aeratedBy: 'plan' | 'response'): Simulation {
  const kLaPerH = row.number('kLa_per_h');
  const limeMol = (row.number('limewater_pct') / 100) * volumeL * limewaterMolPerL;
  const scenario = quietTank({
    days: 5,
    tank: {
      volumeL,
      alkalinityDkh: row.number('start_dKH'),
      calciumMgPerL: totalCalciumMolPerKg(35) * 40.078 * 1000 * tableKgPerL,
      tempC: tableTempC,
    },
    room: { co2Ppm: row.number('air_CO2_ppm') },
    gas: { kLaPerH: aeratedBy === 'plan' ? kLaPerH : 0 },
    responses:
      aeratedBy === 'plan' ? [] : [newResponse('aerate', { day: 1, hour: 0, hours: 120, kLaPerH })],
    additions: [
      {
        day: 1,
        hour: 0,
        additive: 'calciumHydroxide',
        grams: limeMol * additives.calciumHydroxide.molarMassG,
      },
    ],
  });
  return new Simulation(compile(scenario, { pco2Uatm: wetPerDry * startPpm }));
}

const place = (row: Row) =>
  ['start_dKH', 'limewater_pct', 'kLa_per_h', 'air_CO2_ppm'].map((id) => row.text(id)).join('/');

/** pH against time after a dose of limewater, as another integration found it. */
export function recoveryChecks(aeratedBy: 'plan' | 'response' = 'plan'): Check[] {
  const tanks = new Map<string, Simulation>();
  return readTable('recovery_by_aeration.csv').map((row) => {
    const id = place(row);
    const tank = tanks.get(id) ?? dosedTank(row, aeratedBy);
    tanks.set(id, tank);
    tank.advanceTo(row.number('t_h'));
    return {
      id: `recovery by ${aeratedBy}/${id}/${row.text('t_h')}h`,
      quantity: 'pH (NBS) after a limewater dose',
      source: 'PyCO2SYS 1.8.3.4 with an explicit integration (recovery_by_aeration.csv)',
      howVerified: 'computed',
      expected: row.number('pH_NBS'),
      got: tank.view.phTotal + tableNbsMinusTotal,
      tolerance: 0.006,
      unit: 'pH',
    };
  });
}
