import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logRows } from '../../shared/log/csv/exportLog';
import { previewImport, questions, understand } from '../../shared/log/csv/importLog';
import { tableOf } from '../../shared/log/csv/tableOf';
import { inOrder, sameReading, type Reading } from '../../shared/log/reading';
import { csvRows } from '../../src/diary/csv/csvRows';
import { csvText } from '../../src/files/csvText';
import { runsOf } from '../laws/size';
import { anyReading } from './anyReading';
import { dirtyFile } from './dirtyFile';

/** After every line of these files. */
const LATER = '2028-01-01T00:00';

async function read(text: string, known: readonly Reading[] = []) {
  const { rows, headerLine } = tableOf(await csvRows(text))!;
  return previewImport(rows, understand(rows), known, LATER, headerLine);
}

describe('a test log as CSV', () => {
  it('accounts for each of a thousand rows with ten kinds of dirt, by line and reason', async () => {
    const { text, wanted, clean, empty, kinds } = dirtyFile();
    expect(kinds).toBe(10);
    const { taken, refused, emptyLines } = await read(text);
    expect(taken.length + refused.length + emptyLines).toBe(1000);
    expect([taken.length, emptyLines]).toEqual([clean, empty]);
    expect(refused.map(({ line }) => line)).toEqual(wanted.map(({ line }) => line));
    refused.forEach(({ reasons }, i) => expect(reasons.join(' ')).toMatch(wanted[i]!.reason));
  });

  it('takes nothing from the same file a second time', async () => {
    const { text } = dirtyFile();
    const first = await read(text);
    const second = await read(text, first.taken);
    expect(second.taken).toEqual([]);
    expect(second.refused.filter(({ duplicate }) => duplicate).length).toBe(
      first.taken.length + first.refused.filter(({ duplicate }) => duplicate).length,
    );
  });

  it('gives back exactly what went out', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyReading, { maxLength: 12 }), async (readings) => {
        const distinct = readings.filter(
          (r, i) => readings.findIndex((o) => sameReading(o, r)) === i,
        );
        const rows = await csvRows(await csvText(logRows(distinct)));
        const { taken, refused } = previewImport(rows, understand(rows), [], LATER);
        expect(refused).toEqual([]);
        expect(taken).toEqual(inOrder(distinct));
      }),
      runsOf(1000),
    );
  });

  it('reads columns in any order, units in the header, local dates and decimal commas', async () => {
    const text =
      'Notes;KH [meq/l];Date;Time;SG\nhello;3,0;13.4.2026;9:05;1,0264\n;2,85;14.4.2026;21:30;1,026\n';
    const { taken } = await read(text);
    expect(taken.map(({ at }) => at)).toEqual(['2026-04-13T09:05', '2026-04-14T21:30']);
    expect(taken[0]!.alkalinityDkh).toBeCloseTo(8.4116, 3);
    expect(taken[0]!.salinityPractical).toBeCloseTo(35.04, 1);
  });

  it('reads a clock of twelve hours with the month first', async () => {
    const { taken } = await read('when,dKH\n4/13/2026 12:30 am,8.1\n4/14/2026 1:05 PM,8\n');
    expect(taken.map(({ at }) => at)).toEqual(['2026-04-13T00:30', '2026-04-14T13:05']);
  });

  it('asks what the file does not tell, and no more', async () => {
    const open = understand(await csvRows('date,alkalinity,calcium\n3/4/2026,150,"1,285"\n'));
    expect(questions(open)).toHaveLength(3);
    const told = understand(await csvRows('date,alkalinity (ppm),calcium\n3/14/2026,150,420\n'));
    expect(questions(told)).toEqual([]);
    const none = understand(await csvRows('dKH\n8\n'));
    expect(questions(none)).toEqual(['Which column says when?']);
  });

  it('holds no cell that a spreadsheet runs, and gives its words back unchanged', async () => {
    const starts = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠', "'=", "''+", "'"];
    const words = starts.map((start) => `${start}HYPERLINK("x";"y")`);
    const readings = words.map((text, i) => ({
      at: `2026-03-${String(i + 1).padStart(2, '0')}T10:30`,
      ...{ alkalinityDkh: 8.4, notes: text, lot: text.slice(0, 9), test: text.slice(0, 9) },
    }));
    const rows = await csvRows(await csvText(logRows(readings)));
    for (const cell of rows.slice(1).flat()) expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/u);
    const { taken, refused } = previewImport(rows, understand(rows), [], LATER);
    expect(refused).toEqual([]);
    expect(taken).toEqual(readings);
  });
});
