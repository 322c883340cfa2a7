import { expect, it } from 'vitest';
import { previewImport, understand } from '../../shared/log/csv/importLog';
import { pastedRows } from '../../shared/log/csv/pasted';

const read = (text: string) => {
  const rows = pastedRows(text)!;
  return previewImport(rows, understand(rows), [], '2028-01-01T00:00', 0);
};

it('reads a day and a number on each line, with a time or without, with a point or a comma', () => {
  const { taken, refused } = read('2026-03-01 8.4\n2026-03-02 10:30 8.1 dKH\r\n\n2026-03-03, 7.85');
  expect(refused).toEqual([]);
  expect(taken.map(({ at, alkalinityDkh }) => [at, alkalinityDkh])).toEqual([
    ['2026-03-01T12:00', 8.4],
    ['2026-03-02T10:30', 8.1],
    ['2026-03-03T12:00', 7.85],
  ]);
  expect(
    read('01.03.2026 8,4\n13.03.2026;8,1').taken.map(({ alkalinityDkh }) => alkalinityDkh),
  ).toEqual([8.4, 8.1]);
});

it('names the pasted line that it cannot take, counting from the first', () => {
  const { taken, refused } = read('2026-03-01 8.4\n2026-13-02 8.1\n2026-03-03 99');
  expect(taken).toHaveLength(1);
  expect(refused.map(({ line }) => line)).toEqual([2, 3]);
});

it('leaves a table with a header to the reader of files', () => {
  expect(pastedRows('Date;KH\n3/4/2026;8,4')).toBeUndefined();
  expect(pastedRows('  \n')).toBeUndefined();
});
