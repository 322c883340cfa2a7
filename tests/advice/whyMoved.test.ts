import { expect, it } from 'vitest';
import { usualOptions } from '../../workers/engine/simulation';
import { whyMoved } from '../../workers/studies/season/why';
import { quietTank } from '../runs/quietTank';

it('calcium that rises where nothing is poured in is told in grams a week that nobody wrote down', () => {
  const readings = [420, 480].map((calciumMgPerL, i) => ({
    ...{ at: `2026-03-${i === 0 ? '01' : '21'}T10:00`, calciumMgPerL },
  }));
  const asked = { plan: quietTank(), readings, ran: [], backDays: 240, useDkhPerDay: 0 };
  const { would } = whyMoved(asked, usualOptions).moved.find(({ id }) => id === 'calcium')!.since!;
  const unlogged = would.find((one) => one.kind === 'unlogged')!;
  // By hand: 60 mg/L in 300 L are 18 g, of 40.08/147.01 66 g, in 20 days: 23.1 g a week.
  expect(unlogged.additive).toBe('calciumChlorideDihydrate');
  expect(unlogged.gramsPerWeek).toBeCloseTo(23.1, 1);
});
