import fc from 'fast-check';
import { expect, it } from 'vitest';
import { previewImport, understand } from '../../shared/log/csv/importLog';
import { tellsOfWater } from '../../shared/log/reading';
import { inOwnUnits, readTyped, type Typed } from '../../shared/log/typedReading';
import { testUnitsOf } from '../../shared/units/testUnits';
import { runsOf } from '../laws/size';

const NOW = '2026-05-04T09:00';

/** As the form has it: left empty, the time is now. */
const form = (fields: Typed, units: Typed = {}) => readTyped({ at: NOW, ...fields }, units, NOW);

async function typed(phosphateMgPerL: string, unit?: string) {
  const units = unit === undefined ? {} : { phosphateMgPerL: unit };
  return form(await inOwnUnits({ phosphateMgPerL }), units);
}

/** mg/L of PO₄ by hand: 94.97 g/mol of phosphate, 30.97 of phosphorus. */
const P = 94.97 / 30.97;
const read: readonly [string, number][] = [
  ['0.03', 0.03],
  ['0,03', 0.03],
  ['~0,03 mg/l', 0.03],
  ['30 ppb', 0.03],
  ['30 µg/L', 0.03],
  ['30 ug/l', 0.03],
  ['0.1 mg/l PO4', 0.1],
  ['0.1 mg/l PO4-P', 0.1 * P],
  ['0.1 mg/L P', 0.1 * P],
  ['10 ppb P', 0.01 * P],
  ['1 µmol/L', 0.09497],
  ['0', 0],
  ['0.00', 0],
  ['20', 20],
];

it.each(read)('%s is %d mg/L of phosphate', async (text, mgPerL) => {
  const outcome = await typed(text);
  if (!outcome.ok) throw new Error(outcome.problems.join(' '));
  expect(outcome.reading.phosphateMgPerL).toBeCloseTo(mgPerL, 4);
});

const refused: readonly [string, RegExp][] = [
  ['<0.02', /^Phosphate: got “<0\.02”; expected a number: type 0 for less than the kit shows/],
  ['≤ 0,02 mg/L', /type 0 for less than the kit shows/],
  ['-0.1', /expected 0 to 20 mg\/L PO₄/],
  ['−0,1', /expected 0 to 20/],
  ['21', /expected 0 to 20/],
  ['1000000000', /expected 0 to 20/],
  ['1e9', /digits and one decimal mark/],
  ['0.1 mg/l NO3', /expected a number/],
  ['none', /expected a number/],
  ['0..1', /expected a number/],
  ['NaN', /expected a number/],
  ['Infinity', /expected a number/],
  ['3 0', /expected a number/],
];

it.each(refused)('%s is refused with why', async (text, why) => {
  const outcome = await typed(text);
  expect(outcome.ok).toBe(false);
  if (!outcome.ok) expect(outcome.problems.join(' ')).toMatch(why);
});

it('an empty field is none, and an empty form no line', async () => {
  for (const text of ['', '   ']) {
    const outcome = await typed(text);
    expect(outcome.ok).toBe(false);
    const beside = form({ phosphateMgPerL: text, alkalinityDkh: '8.4' });
    expect(beside.ok && beside.reading).toEqual({ at: NOW, alkalinityDkh: 8.4 });
  }
});

it('whatever is typed is kept as a number of the range, or refused with a sentence', async () => {
  const pieces = fc.constantFrom(
    ...['0', '3', '9', '.', ',', '-', '−', '<', '~', ' ', 'e', '1e9', 'mg/l', 'ppb', 'PO4-P'],
    ...['P', 'µg/L', 'NaN', '0.03', '30', '%', '\t', '١', '₄'],
  );
  await fc.assert(
    fc.asyncProperty(fc.array(pieces, { minLength: 1, maxLength: 5 }), async (parts) => {
      const outcome = await typed(parts.join(''));
      if (!outcome.ok) {
        expect(outcome.problems.length).toBeGreaterThan(0);
        expect(outcome.problems.join(' ')).not.toMatch(/undefined|\bNaN\b(?!”)(?![^“]*”)/);
        return;
      }
      const { phosphateMgPerL } = outcome.reading;
      expect(phosphateMgPerL).toBeGreaterThanOrEqual(0);
      expect(phosphateMgPerL).toBeLessThanOrEqual(20);
    }),
    runsOf(3000),
  );
});

it('every unit that is offered gives a number and is read back by its own name', () => {
  for (const { name, toOwn } of testUnitsOf('mg/L PO₄')) {
    const outcome = form({ phosphateMgPerL: '0.5' }, { phosphateMgPerL: name });
    if (!outcome.ok) throw new Error(`${name}: ${outcome.problems.join(' ')}`);
    expect(outcome.reading.phosphateMgPerL).toBeCloseTo(toOwn(0.5), 9);
  }
});

it.each([
  ['Phosphat (ppb)', '30', 0.03],
  ['PO4 [mg/l]', '0,03', 0.03],
  ['PO4-P (mg/L)', '0.01', 0.01 * P],
  ['phosphorus (ppb)', '10', 0.01 * P],
])('a column %s with %s', (header, cell, mgPerL) => {
  const rows = [
    ['date', header],
    ['2026-05-01', cell],
  ];
  const { taken, refused: left } = previewImport(rows, understand(rows), [], NOW);
  expect(left).toEqual([]);
  expect(taken[0]!.phosphateMgPerL).toBeCloseTo(mgPerL, 4);
});

it('what is done to equipment is a line of its own, and says nothing of the water', () => {
  const done = form({ event: 'cleaned', equipment: 'skimmer' });
  if (!done.ok) throw new Error(done.problems.join(' '));
  expect(done.reading).toEqual({ at: NOW, event: 'cleaned', equipment: 'skimmer' });
  expect(tellsOfWater(done.reading)).toBe(false);
  const named = form({ event: 'Probe calibrated' });
  expect(named.ok && named.reading.event).toBe('calibrated');
  const alone = form({ equipment: 'skimmer' });
  expect(!alone.ok && alone.problems.join()).toMatch(/Say what was done to it/);
  const unknown = form({ event: 'kicked', equipment: 'skimmer' });
  expect(!unknown.ok && unknown.problems.join()).toMatch(/Done: got “kicked”/);
  const rows = [
    ['date', 'done', 'to what'],
    ['2026-05-01', 'reservoir filled', ''],
    ['2026-05-02', 'polished', 'glass'],
  ];
  const { taken, refused: left } = previewImport(rows, understand(rows), [], NOW);
  expect(taken).toEqual([{ at: '2026-05-01T12:00', event: 'reservoirFilled' }]);
  expect(left).toHaveLength(1);
});
