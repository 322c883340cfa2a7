import { expect, it } from 'vitest';
import type { LineResult } from '../../shared/verdict/lineResult';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { stillInside } from '../../workers/studies/plan/breaches';
import { quietTank } from '../runs/quietTank';

const { lines } = run(quietTank());
const passed = (id: string, by: number): LineResult => {
  const line = lineOf(lines, id);
  return { ...line, firstH: 1, worst: line.limit + by };
};

it.each([
  // What a probe cannot tell, and half a hundredth of 11 dKH.
  ['phHigh', 0.1],
  ['alkalinityHigh', 0.055],
])('%s that is passed today may be passed by %d more, and no farther', (id, untold) => {
  const today = [passed(id, 0.2)];
  expect(stillInside(passed(id, 0.2 + 0.9 * untold), today)).toBe(true);
  expect(stillInside(passed(id, 0.2 + 1.1 * untold), today)).toBe(false);
  expect(stillInside(passed(id, 0.01), [])).toBe(false);
});
