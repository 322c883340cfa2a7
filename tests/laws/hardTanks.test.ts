import { describe, expect, it } from 'vitest';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { quietTank } from '../runs/quietTank';
import { patience } from './size';

/** Tanks that random trials once found the engine to fail in, in few lines. */
const hardTanks = {
  'whose algae use up all carbon within one step': quietTank({
    days: 2,
    photosynthesis: { grossMmolPerLPerDay: 3, respiredShare: 0 },
    gas: { kLaPerH: 0.1 },
    lights: { onHour: 9, hours: 0.5 },
  }),
  'whose level sinks by nothing but the salt that algae take': quietTank({
    days: 2,
    photosynthesis: { grossMmolPerLPerDay: 3, respiredShare: 0 },
    gas: { kLaPerH: 2 },
    lights: { onHour: 9, hours: 0.5 },
    topOff: { reservoirL: 20, deadBandL: 4 },
  }),
  'whose reservoir is refilled twice a day': quietTank({
    days: 2,
    evaporation: { litresPerDay: 6 },
    topOff: { reservoirL: 6, refillEveryDays: 0.5, deadBandL: 0.1 },
  }),
  'whose pump would fill the dead band in a blink': quietTank({
    days: 2,
    tank: { volumeL: 20 },
    evaporation: { litresPerDay: 2 },
    topOff: { reservoirL: 20, pumpLPerH: 5000, deadBandL: 0.01 },
  }),
};

describe('a tank', () => {
  it.each(Object.entries(hardTanks))(
    '%s runs to its end',
    (_, scenario) => {
      const { trace, closures } = run(scenario);
      expect(trace.rows).toBe(49);
      expect(new Float64Array(trace.buffer).every(Number.isFinite)).toBe(true);
      expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
    },
    patience,
  );

  it('whose reservoir is refilled twice a day never has it dry', () => {
    const { trace } = run(hardTanks['whose reservoir is refilled twice a day']);
    expect(Math.min(...readColumn(trace, 'reservoir_l'))).toBeGreaterThan(0);
    expect(readColumn(trace, 'topoff_l').at(-1)).toBeGreaterThan(11);
  });
});
