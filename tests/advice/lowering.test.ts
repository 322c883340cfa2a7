import { expect, it } from 'vitest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualOptions } from '../../workers/engine/simulation';
import { loweringsOf } from '../../workers/studies/season/lowering';
import { SeasonTank } from '../../workers/studies/season/seasonTank';
import { quietTank } from '../runs/quietTank';

/** What is told of 300 L that hold 1,600 mg/L of magnesium where 1,400 is the limit, and lose nothing. */
function told(newWaterHolds: number) {
  const { waterChanges, ...tank } = quietTank({ tank: { magnesiumMgPerL: 1600 } });
  const salt = { ...waterChanges.salt, magnesiumMgPerL: newWaterHolds };
  const now = { ...tank, waterChanges: { ...waterChanges, salt } };
  return loweringsOf(new SeasonTank(now, 0, usualOptions), { kind: 'none' }, usualMostPerDay);
}

it('the smallest weekly change that brings magnesium down is told with its litres and its day', () => {
  const [magnesium] = told(1300);
  expect(magnesium).toMatchObject({ id: 'magnesium', limit: 1400, newWaterHolds: 1300 });
  expect(magnesium!.above).toBeCloseTo(1600, 6);
  // By hand: of the 300 too much a tenth goes each week; ten changes leave 105, the eleventh 94.
  expect(magnesium!.ways).toEqual([{ kind: 'change', percent: 10, litres: 30, days: 77 }]);
});

it('new water that holds more than the limit is no way down', () => {
  expect(told(1450)).toMatchObject([{ id: 'magnesium', ways: [], newWaterHolds: 1450 }]);
});
