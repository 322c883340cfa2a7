import { describe, expect, it } from 'vitest';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { switchesChecks } from './checks/switches';
import { quietTank } from './quietTank';

describe('pumps and sensors', () => {
  it(
    'switch to the second when arithmetic says',
    () => {
      expect(switchesChecks()).toHaveLength(5);
      expect(misses(switchesChecks())).toEqual([]);
    },
    patience,
  );

  it(
    'leave the reservoir dry, and the tank falling, once it has given all it had',
    () => {
      const { trace } = run(
        quietTank({
          days: 4,
          evaporation: { litresPerDay: 6 },
          topOff: { reservoirL: 9, refillEveryDays: 0 },
        }),
      );
      const reservoir = readColumn(trace, 'reservoir_l');
      expect(reservoir.at(-1)).toBe(0);
      expect(reservoir[30]).toBeGreaterThan(0);
      expect(readColumn(trace, 'topoff_l').at(-1)).toBeCloseTo(9, 9);
      expect(readColumn(trace, 'volume_l').at(-1)).toBeCloseTo(300 - (24 - 9), 1);
    },
    patience,
  );

  it(
    'draw from a bottle what was set, and go on from a new bottle when it is empty',
    () => {
      const bottle = { name: 'soda', recipe: [{ additive: 'sodiumBicarbonate', gramsPerL: 40 }] };
      const dosed = (stockL: number) => {
        const dosers = [{ ...bottle, mlPerDay: 500, stockL }];
        const { trace } = run(quietTank({ days: 4, dosers: dosers as never }));
        return readColumn(trace, 'alkalinity_dkh').at(-1)!;
      };
      expect(dosed(0.5)).toBeCloseTo(dosed(50), 9);
      expect(dosed(50)).toBeGreaterThan(10);
    },
    patience,
  );
});
