import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { previewImport, understand } from '../../shared/log/csv/importLog';
import { linesRead, pastedRows } from '../../shared/log/csv/pasted';
import { tableOf } from '../../shared/log/csv/tableOf';
import { csvRows } from '../../src/diary/csv/csvRows';
import { runsOf } from '../laws/size';
import { pastedText } from './pastedText';

const NOW = '2028-01-01T00:00';

/** As the page reads what was pasted. */
async function read(text: string, now = NOW) {
  const bare = pastedRows(text, now);
  const table = bare ? undefined : tableOf(await csvRows(text));
  const lines = bare ?? (table ? undefined : linesRead(text, now));
  const rows = lines?.rows ?? table!.rows;
  return previewImport(rows, understand(rows), [], now, lines?.lines ?? table!.headerLine);
}
const tested = async (text: string, now?: string) =>
  (await read(text, now)).taken.map(({ at, alkalinityDkh }) => [at, alkalinityDkh]);

describe('lines that are pasted', () => {
  it('hold a day and a number each, with a time or without, with a point or a comma', async () => {
    const text = '2026-03-01 8.4\n2026-03-02 10:30 8.1 dKH\r\n\n2026-03-03, 7.85';
    expect((await read(text)).refused).toEqual([]);
    expect(await tested(text)).toEqual([
      ['2026-03-01T12:00', 8.4],
      ['2026-03-02T10:30', 8.1],
      ['2026-03-03T12:00', 7.85],
    ]);
    expect(await tested('01.03.2026 8,4\n13.03.2026;8,1')).toEqual([
      ['2026-03-01T12:00', 8.4],
      ['2026-03-13T12:00', 8.1],
    ]);
  });

  it('without a day are one a day, the last of them now, and are said to be', async () => {
    const now = '2026-03-06T18:00';
    const six = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5];
    const wanted = six.map((dkh, i) => [`2026-03-0${i + 1}T18:00`, dkh]);
    for (const text of [
      '8.4, 8.1, 8.2, 7.8, 7.7, 7.5',
      '8,4; 8,1; 8,2; 7,8; 7,7; 7,5',
      '8,4, 8,1, 8,2, 7,8, 7,7, 7,5',
      '8.4,8.1,8.2,7.8,7.7,7.5',
      '8.4 8.1 8.2 7.8 7.7 7.5\n',
      '8.4\n8.1\n8.2\n7.8\n7.7\n7.5',
    ]) {
      expect(pastedRows(text, now)?.onePerDay).toBe(true);
      expect(await tested(text, now)).toEqual(wanted);
    }
    expect(pastedRows('2026-03-01 8.4', now)?.onePerDay).toBeUndefined();
    expect(pastedRows('8.4', now)).toBeUndefined();
  });

  it('say the hour as people write it', async () => {
    const text =
      '17.10.2026 9:00 Uhr 8,6\n18.10.2026, 9 Uhr, 8,5 dKH\n19.10.2026 um 9.30 Uhr; 8,4\n20.10.2026 9:15 pm 8,3';
    expect(await tested(text)).toEqual([
      ['2026-10-17T09:00', 8.6],
      ['2026-10-18T09:00', 8.5],
      ['2026-10-19T09:30', 8.4],
      ['2026-10-20T21:15', 8.3],
    ]);
  });

  it('are cut at commas and have decimal commas, too, with a header or without', async () => {
    const wanted = [
      ['2026-10-17T12:00', 8.6],
      ['2026-10-18T12:00', 8],
    ];
    expect(await tested('17.10.2026,8,6\n18.10.2026,8')).toEqual(wanted);
    expect(await tested('Datum,KH (dKH)\n17.10.2026,8,6\n18.10.2026,8')).toEqual(wanted);
    const more = await read(
      'Datum,KH (dKH),Calcium,Salz (ppt)\n17.10.2026,8,6,420,34,8\n18.10.2026,8,5,425,35',
    );
    expect(more.refused).toEqual([]);
    expect(more.taken[0]).toMatchObject({ alkalinityDkh: 8.6, calciumMgPerL: 420 });
    expect(more.taken[1]).toMatchObject({ alkalinityDkh: 8.5, calciumMgPerL: 425 });
  });

  it('may name a day alone, its month alone, or a value a day from one on', async () => {
    expect(await tested('21. 8,4\n22. 8,3', '2026-11-27T10:00')).toEqual([
      ['2026-11-21T12:00', 8.4],
      ['2026-11-22T12:00', 8.3],
    ]);
    // The latest that has been.
    expect(await tested('28. 8,4\n30.12. 8,3', '2026-11-27T10:00')).toEqual([
      ['2026-10-28T12:00', 8.4],
      ['2025-12-30T12:00', 8.3],
    ]);
    const days = ['21', '22', '23'].map((day) => `2026-11-${day}T09:00`);
    const wanted = [8.4, 8.1, 8.2].map((dkh, i) => [days[i], dkh]);
    for (const list of [
      'from the 21st, 09:00: 8.4, 8.1, 8.2',
      'ab dem 21., 9 Uhr: 8,4; 8,1; 8,2',
      'seit 21.11.2026 9:00 Uhr 8,4 8,1 8,2 dKH',
      'Three values from the 21st, 09:00: 8.4, 8.1, 8.2',
    ]) {
      expect(await tested(list, '2026-11-27T10:00')).toEqual(wanted);
    }
  });

  it('may say weekday and month in words', async () => {
    const text =
      'Sa, 17.10.2026 9:00 Uhr 8,6\n18. Oktober 2026: 8,5\n19. Okt. 2026 - 8,4\nOct 20, 2026 8.3\n21 March 2026 8.2';
    expect((await tested(text)).map(([moment]) => moment)).toEqual([
      ...['2026-10-17T09:00', '2026-10-18T12:00', '2026-10-19T12:00'],
      ...['2026-10-20T12:00', '2026-03-21T12:00'],
    ]);
  });

  it('are told one by one where none of them can be read', async () => {
    const { taken, refused } = await read(
      '3/4 8.6\n8.4 8.1\n2026-10-17 8.6 measured late\n2026-10-18 8.1 pH',
    );
    expect(taken).toEqual([]);
    expect(refused.map(({ line }) => line)).toEqual([1, 2, 3, 4]);
  });

  it('may repeat a day: two tests of one day are two, the same line twice is one', async () => {
    const { taken, refused } = await read('2026-03-01 8.4\n2026-03-01 8.2\n2026-03-01 8.4');
    expect(taken).toHaveLength(2);
    expect(refused).toMatchObject([{ line: 3, duplicate: true }]);
  });

  it('keep what is none of them, with its line and why', async () => {
    const { taken, refused } = await read(
      '2026-03-01 8.4\n2026-13-02 8.1\nfed too much\n2026-03-03 99',
    );
    expect(taken).toHaveLength(1);
    expect(refused.map(({ line }) => line)).toEqual([2, 3, 4]);
    expect(refused[1]!.reasons.join(' ')).toContain('fed too much');
  });

  it('of a table without headers lose none', async () => {
    const { taken, refused } = await read(
      '17.10.2026;8,6;420;1310\n18.10.2026;8,5;425;1300\n19.10.2026;8,4;421;1290',
    );
    expect(refused).toEqual([]);
    expect(taken).toHaveLength(3);
    expect(taken[0]).toMatchObject({
      ...{ alkalinityDkh: 8.6, calciumMgPerL: 420, magnesiumMgPerL: 1310 },
    });
  });

  it('leave a table with a header to the reader of files', () => {
    expect(pastedRows('Date;KH\n3/4/2026;8,4', NOW)).toBeUndefined();
    expect(pastedRows('  \n', NOW)).toBeUndefined();
  });

  it('are all accounted for, and read as they were meant, however they are written', async () => {
    let [lines, right] = [0, 0];
    await fc.assert(
      fc.asyncProperty(pastedText, async ({ text, wanted, empty, dirty }) => {
        const { taken, refused, emptyLines } = await read(text);
        const meant = wanted.map(({ at, dkh }) => [at, dkh]);
        const got = taken.map(({ at, alkalinityDkh }) => [at, alkalinityDkh]);
        // Nothing lost: each line is a reading, refused with its number, or empty.
        expect(refused.filter(({ duplicate }) => !duplicate).map(({ line }) => line)).toEqual(
          dirty,
        );
        expect(emptyLines).toBe(empty);
        expect(got).toEqual(meant);
        lines += wanted.length;
        right += got.length;
      }),
      runsOf(2000),
    );
    expect(lines).toBeGreaterThan(0);
    expect(right).toBe(lines);
  });
});
