import { expect, it } from 'vitest';
import { emptyBlock, indexOf } from '../../shared/species/block';
import { oxygenDemand } from '../../shared/species/oxygenDemand';
import { Books } from '../../workers/engine/books';
import { scaleDraws } from '../../workers/engine/overdraw';
import { run, stateAfter } from '../../workers/engine/run';
import { quietTank } from './quietTank';

it('what is short is shared by those that draw on it, and by nobody else', () => {
  const [scarce, other] = [indexOf.TAN, indexOf.DIC];
  const draws = [{ index: scarce, moles: -1 }];
  const both = [
    { index: scarce, moles: -2 },
    { index: other, moles: 1 },
  ];
  const makes = [
    { index: other, moles: -1 },
    { index: scarce, moles: 1 },
  ];
  const extents = new Float64Array([3, 2, 1, 5]);
  const terms = [draws, both, makes, [{ index: other, moles: -1 }]];
  // 2.5 mol there, 1 made in the step and none given: half of the 7 that are asked for.
  expect(scaleDraws(terms, extents, scarce, 2.5, 0)).toBe(true);
  expect([...extents]).toEqual([1.5, 1, 1, 5]);
  expect(scaleDraws(terms, extents, scarce, 2.5, 0)).toBe(false);
});

it('what rounding keeps from an amount is kept beside it, whichever of both is the larger', () => {
  const contents = emptyBlock();
  const books = new Books([{ id: 'tank', contents }], 1, oxygenDemand(1.1));
  const add = (amount: number) => books.react(0, [{ index: indexOf.Ca, moles: 1 }], amount);
  add(1);
  for (let i = 0; i < 1000; i++) add(1e-16);
  expect(books.amounts[indexOf.Ca]).toBe(1);
  expect(books.lost[indexOf.Ca]).toBeCloseTo(1e-13, 20);
  // 1 is lost in 2^60 and comes back when that is taken out again.
  add(2 ** 60);
  add(-(2 ** 60));
  expect(books.amounts[indexOf.Ca]! + books.lost[indexOf.Ca]!).toBeCloseTo(1, 12);
});

it('oxygen closes after a change of what living matter takes of it', () => {
  const plan = (perCarbon: number, days: number) =>
    quietTank({
      ...{ days, oxygen: { perCarbon, respirationMmolPerLPerDay: 1 } },
      photosynthesis: { grossMmolPerLPerDay: 0.5 },
    });
  const { closures } = run(plan(1.4, 2), undefined, stateAfter(plan(1.1, 1)));
  expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-9);
  for (const off of Object.values(closures.elements)) expect(off).toBeLessThan(1e-12);
  expect(closures.elements.O).toBeDefined();
});

it('oxygen closes through nights in which all of it is used', () => {
  for (const kLaPerH of [0.02, 0.3, 3]) {
    const { closures } = run(
      quietTank({
        ...{
          days: 3,
          gas: { kLaPerH, enhancement: 'off' },
          oxygen: { respirationMmolPerLPerDay: 9 },
        },
        ...{ photosynthesis: { grossMmolPerLPerDay: 5 }, lights: { hours: 8, rampHours: 2 } },
      }),
    );
    expect(closures.elements.O).toBeLessThan(1e-12);
  }
});
