import { expect, it } from 'vitest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualOptions } from '../../workers/engine/simulation';
import { SeasonTank } from '../../workers/studies/season/seasonTank';
import { takenBack } from '../../workers/studies/season/takenBack';
import { quietTank } from '../runs/quietTank';

/** What is told of 66 g poured into 300 L that stand at their new water, and are changed once a week. */
function told(percent: number) {
  const { waterChanges, ...tank } = quietTank({ tank: { calciumMgPerL: 420 } });
  const salt = { ...waterChanges.salt, calciumMgPerL: 420 };
  const now = { ...tank, waterChanges: { ...waterChanges, salt, percent, everyDays: 7 } };
  const pour = { day: 2, hour: 9, additive: 'calciumChlorideDihydrate', grams: 66 } as const;
  const first = { scenario: { ...now, additions: [pour] }, untilDay: 3 };
  return takenBack(new SeasonTank(now, 0, usualOptions), first, 72, usualMostPerDay);
}

it('a change of water that takes back at once what was poured in is told, with how much of it', () => {
  // By hand: of 66 g 40.08/147.01 are calcium, 60 mg/L, and half of it goes; 20 in a day are allowed.
  const [calcium, ...others] = told(50);
  expect(calcium!.id).toBe('calcium');
  expect(calcium!.byMgPerL).toBeCloseTo(30, 0);
  expect(others).toEqual([]);
  expect(told(25)).toEqual([]);
});
