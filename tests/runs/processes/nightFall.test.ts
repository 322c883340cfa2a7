import { describe, expect, it } from 'vitest';
import { breathedFromFall } from '../../../shared/processes/nightFall';
import { breathedMmolPerLPerDay } from '../../../shared/processes/unseenRespiration';
import { newFault } from '../../../shared/scenario/newFault';
import { readColumn } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import { quietTank } from '../quietTank';

const at = (tank: ReturnType<typeof quietTank>) => ({
  ...{ tempC: tank.tank.tempC, salinityPractical: tank.tank.salinityPractical },
  kLaPerH: tank.gas.kLaPerH,
});

describe('what a tank breathes, from the night’s fall', () => {
  it('is what was set, with pumps off and with them on', () => {
    for (const respirationMmolPerLPerDay of [0.4, 0.9, 2.2]) {
      const tank = quietTank({
        days: 2,
        gas: { kLaPerH: 0.7 },
        lights: { onHour: 8, hours: 12 },
        photosynthesis: { grossMmolPerLPerDay: 0.3 },
        oxygen: { respirationMmolPerLPerDay },
      });
      const night = readColumn(run(tank).trace, 'oxygen_mg_l');
      const on = { fromMgPerL: night[21]!, toMgPerL: night[25]!, hours: 4 };
      const breathed = breathedMmolPerLPerDay(tank);
      expect(breathedFromFall(on, at(tank)) / breathed).toBeCloseTo(1, 3);
      const fault = newFault('powerCut', { day: 1, hour: 21, endsAfterH: 3, gasPercent: 0 });
      const still = readColumn(
        run({ ...tank, faults: [{ ...fault, cooling: 'none' }] }).trace,
        'oxygen_mg_l',
      );
      const off = { fromMgPerL: still[21]!, toMgPerL: still[22]!, hours: 1 };
      expect(breathedFromFall(off, { ...at(tank), kLaPerH: 0 }) / breathed).toBeCloseTo(1, 3);
    }
  });

  it('with pumps off is hand arithmetic: a tenth of a milligram in ten minutes is 0.45 mmol a day', () => {
    const fall = { fromMgPerL: 6.5, toMgPerL: 6.4, hours: 1 / 6 };
    const closed = { kLaPerH: 0, tempC: 25, salinityPractical: 35 };
    expect(breathedFromFall(fall, closed)).toBeCloseTo((0.1 * 6 * 24) / 31.998, 9);
    // Water that stands with the air takes in what is breathed: no fall at all is still breath.
    const level = { fromMgPerL: 6, toMgPerL: 6, hours: 8 };
    expect(breathedFromFall(level, { ...closed, kLaPerH: 1 })).toBeGreaterThan(0.5);
  });
});
