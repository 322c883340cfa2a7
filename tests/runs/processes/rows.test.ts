import { expect, it } from 'vitest';
import { processes } from '../../../shared/processes/registry';
import { say } from '../../../shared/words/ledger';
import { compile } from '../../../workers/engine/compile';
import { quietTank } from '../quietTank';

it.each(processes.map((kind) => [kind.id, kind.label]))(
  'the row of %s has the name that is written under its id',
  (id, label) => {
    expect(say[id as keyof typeof say]).toBe(label);
  },
);

const rowsOf = (overrides: Parameters<typeof quietTank>[0]) =>
  compile(quietTank(overrides)).ledger.map(({ id }) => id);

it('corals that take nothing have no row in the ledger', () => {
  const rows = (useDkhPerDay: number) => rowsOf({ corals: { useDkhPerDay } });
  expect(rows(1)).toContain('calcification');
  expect(rows(0)).not.toContain('calcification');
});

it('nor has a refugium that is never lit, whatever it is typed to take, nor a filter of no pace', () => {
  const refugium = (refugiumHours: number) =>
    rowsOf({ photosynthesis: { refugiumMmolPerLPerDay: 0.1, refugiumHours } });
  expect(refugium(8)).toContain('refugium');
  expect(refugium(0)).not.toContain('refugium');
  const filter = (nitrificationPerH: number) => rowsOf({ filter: { nitrificationPerH } });
  expect(filter(0.1)).toContain('nitrification');
  expect(filter(0)).not.toContain('nitrification');
});

it('each says where its numbers are from', () => {
  expect(processes.filter(({ cites }) => cites.length === 0)).toEqual([]);
});
