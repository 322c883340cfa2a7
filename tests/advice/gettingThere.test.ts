import { expect, it } from 'vitest';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { waysThere, type Seek } from '../../workers/studies/turn/gettingThere';
import { quietTank } from '../runs/quietTank';

const lever = { kind: 'mix', from: 1, most: 2, rounded: (value: number) => value } as const;
const unasked = () => {
  throw new Error('nothing is to be tried here');
};
const seek = (held: Seek['held'], own: Partial<Seek>): Seek => ({
  ...{ lever: { ...lever, set: unasked }, holding: 1, held, targetDkh: 8, days: 9 },
  ...{ replay: unasked, runPlan: (plan) => run(plan, usualOptions) },
  ...{ moveDkh: () => 0, allowedDkh: 1, ...own },
});
const firsts = (asked: Seek) => Array.from(waysThere(asked), ({ first }) => first.kind);

it('a tank that rises to the target by what runs has nothing poured in', () => {
  // 80 mL of 60 g/L soda ash: 4.8 g a day, 0.85 dKH in 300 L by 1.890 g for 1 dKH in 100 L (additives.csv).
  const soda = { name: 'soda', recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 60 } as const] };
  const rising = quietTank({ days: 9, dosers: [{ ...soda, mlPerDay: 80, stockL: 5 }] as never });
  expect(firsts(seek(rising, { targetDkh: 8.2 }))).toEqual(['none']);
  expect(firsts(seek(quietTank({ days: 9 }), { targetDkh: 8.2 }))).toEqual(['pour', 'none']);
});

it('a reservoir is not mixed twice for less than 0.6 dKH', () => {
  expect(firsts(seek(quietTank({ tank: { alkalinityDkh: 8.5 } }), {}))).toEqual(['none']);
  const tried = seek(quietTank({ tank: { alkalinityDkh: 8.7 } }), { moveDkh: unasked });
  expect(() => firsts(tried)).toThrow('nothing is to be tried');
});
