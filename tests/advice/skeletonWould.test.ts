import { expect, it } from 'vitest';
import { wouldTell } from '../../workers/studies/season/wouldTell';
import { quietTank } from '../runs/quietTank';

/** What is told of magnesium that strayed, in a tank where 4 mmol more of it in a skeleton take 10 mg/L. */
const told = (by: number) =>
  wouldTell({
    ...{ id: 'magnesium', by, days: 60, level: 1300, salinityShare: 0 },
    scenario: quietTank(),
    endsOff: ({ corals }) => -2.5 * corals.skeletonMgPerCa,
  }).filter(({ kind }) => kind === 'skeleton');

it('skeletons that would make up what is missing are told with what they would hold', () => {
  expect(told(-30)).toEqual([{ kind: 'skeleton', mgPerCa: 12, typed: 0 }]);
});

it('and not where they would have to hold more than any does', () => {
  expect(told(-490)).toHaveLength(1);
  expect(told(-510)).toEqual([]);
  expect(told(30)).toEqual([]);
});
