import { expect, it } from 'vitest';
import { usualOptions } from '../../workers/engine/simulation';
import { hourlyDkh } from '../../workers/studies/forecast/hourly';
import { quietTank } from '../runs/quietTank';

it('a forecast has each hour once, the first among them, whatever was dosed before', () => {
  const plan = quietTank({ days: 3, corals: { useDkhPerDay: 1 } });
  const { dosers, topOff, waterChanges } = plan;
  const still = [{ untilH: 24, dosing: { dosers, topOff, waterChanges } }];
  const alone = hourlyDkh(plan, [], usualOptions);
  const after = hourlyDkh(plan, still as never, usualOptions);
  expect(alone).toHaveLength(3 * 24 + 1);
  expect(alone[0]).toBeCloseTo(8, 3);
  // The first of the three days is what was still dosed, here the same.
  expect(after).toHaveLength(alone.length);
  after.forEach((dkh, hour) => expect(dkh).toBeCloseTo(alone[hour]!, 3));
});
