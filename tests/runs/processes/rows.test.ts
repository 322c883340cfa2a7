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

it('corals that take nothing have no row in the ledger', () => {
  const rows = (useDkhPerDay: number) =>
    compile(quietTank({ corals: { useDkhPerDay } })).ledger.map(({ id }) => id);
  expect(rows(1)).toContain('calcification');
  expect(rows(0)).not.toContain('calcification');
});
