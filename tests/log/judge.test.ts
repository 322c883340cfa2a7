import { expect, it } from 'vitest';
import { judgedSentence } from '../../src/say/log/judged';
import { judge, strays } from '../../shared/log/judge';
import { lotOffsetOf } from '../../shared/log/lotOffset';
import { inOwnUnits, readTyped, typedOf } from '../../shared/log/typedReading';

const forecast: Parameters<typeof judge>[1] = {
  timesH: [0, 24, 48],
  dkh: [8.5, 8.4, 8.2],
  spreadDkh: [0.1, 0.08, 0.08],
  suddenH: [],
};

const judgedAt = (dkh: number, sigmaDkh: number, timeH: number, expected = forecast) =>
  judge({ dkh, sigmaDkh, timeH, lot: { byDkh: 0, sigmaDkh: 0 } }, expected);
const said = (dkh: number) => judgedSentence(dkh, judgedAt(dkh, 0.06, 36)!);

it('judges a reading against what was expected, test and forecast together', () => {
  // √(0.08² + 0.06²) = 0.1, worked by hand.
  const judged = judgedAt(8.1, 0.06, 36)!;
  expect(judged.standardised).toBeCloseTo(-2, 6);
  expect(judgedSentence(8.1, judgedAt(8.1, 0.08, 36)!)).toBe(
    '8.1 where 8.3 ± 0.2 was expected: within noise.',
  );
  expect(said(7.9)).toContain('far below what noise explains');
  expect(said(8.55)).toContain('higher than noise usually makes it');
  expect(judgedAt(8.1, 0.15, 49)).toBeUndefined();
});

it('expects the water before a dose until it is poured in, and the water after it from then on', () => {
  const dosed = {
    timesH: [0, 1, 2, 3, 4],
    dkh: [8.0, 7.9, 9.8, 9.7, 9.6],
    spreadDkh: [0.1, 0.1, 0.1, 0.1, 0.1],
    suddenH: [2],
  };
  const expected = (timeH: number) => judgedAt(8, 0.1, timeH, dosed)!.expectedDkh;
  expect(expected(1.5)).toBeCloseTo(7.85, 9);
  expect(expected(2)).toBeCloseTo(7.8, 9);
  expect(expected(2.5)).toBeCloseTo(9.75, 9);
  const midway = { ...dosed, suddenH: [1.5] };
  expect(judgedAt(8, 0.1, 1.75, midway)!.expectedDkh).toBeCloseTo(9.825, 9);
});

it('holds a reading against what its own bottle reads', () => {
  const fit = { lots: ['red', 'blue'], estimates: [{ id: 'lot 1', value: 0.35 }] };
  const read = { dkh: 8.65, sigmaDkh: 0.06, timeH: 36 };
  const from = (lot: string) => judge({ ...read, lot: lotOffsetOf(fit, lot) }, forecast)!;
  expect(from('blue').standardised).toBeCloseTo(0, 9);
  expect(from('blue').expectedDkh).toBeCloseTo(8.65, 9);
  expect(from('red').standardised).toBeCloseTo(3.5, 9);
  // √(0.08² + 0.06² + 0.3²), worked by hand: nobody knows how a third bottle reads.
  expect(from('green').standardised).toBeCloseTo(0.35 / 0.316228, 5);
  expect(lotOffsetOf({ lots: [''], estimates: [] })).toEqual({ byDkh: 0, sigmaDkh: 0 });
});

it('proposes a refit after a run of misses on one side, not after one', () => {
  expect(strays([0.3, -2.5, 0.1])).toBe(false);
  expect(strays([-2.5, 0.1, -2.2])).toBe(true);
  expect(strays([-2.5, 0.1, 2.2])).toBe(false);
  expect(strays([1.2, 1.4, 0.2, 1.1, 1.6])).toBe(true);
  expect(strays([1.2, 1.4, 0.2, -1.1, 1.6])).toBe(false);
});

it('reads a form in the units chosen beside its fields, and gives back what it was given', () => {
  const at = '2026-03-04T10:30';
  const typed = { at, alkalinityDkh: '3,0', salinityPractical: '1,026' };
  const units = { alkalinityDkh: 'meq/L', salinityPractical: 'SG 25/25' };
  const outcome = readTyped(typed, units, at);
  if (!outcome.ok) throw new Error(outcome.problems.join());
  expect(outcome.reading.alkalinityDkh).toBeCloseTo(8.4116, 3);
  expect(outcome.reading.salinityPractical).toBeCloseTo(34.5, 1);
  expect(readTyped(typedOf(outcome.reading), {}, at)).toEqual(outcome);
});

it.each([
  ['alkalinityDkh', '3.0 meq/L', 8.41161],
  ['alkalinityDkh', '8,4 dKH', 8.4],
  ['alkalinityDkh', '~8.4', 8.4],
  ['alkalinityDkh', '150 ppm', 8.4044],
  ['salinityPractical', '1,026 SG', 34.5082],
  ['salinityPractical', '35 psu', 35],
  ['calciumMgPerL', '0.42 g/L', 420],
  ['tempC', '78 °F', 25.5556],
] as const)(
  'reads %s typed as “%s”, whatever unit stands beside the field',
  async (name, text, expected) => {
    const at = '2026-03-04T10:30';
    for (const units of [
      {},
      { alkalinityDkh: 'mg/L CaCO₃', salinityPractical: 'mS/cm at 25 °C', tempC: '°F' },
    ]) {
      // A bare number is meant in the unit beside it.
      if (units.alkalinityDkh && text === '~8.4') continue;
      const outcome = readTyped(await inOwnUnits({ at, [name]: text }), units, at);
      if (!outcome.ok) throw new Error(outcome.problems.join());
      expect(outcome.reading[name]).toBeCloseTo(expected, 3);
    }
  },
);

it('says of a unit of another kind what it is not', async () => {
  const at = '2026-03-04T10:30';
  const outcome = readTyped(await inOwnUnits({ at, alkalinityDkh: '8.4 kg' }), {}, at);
  expect(outcome.ok ? '' : outcome.problems.join()).toContain('8.4 kg');
});

it('takes words as they were typed: a form is no spreadsheet, whose marks would be dropped', () => {
  const at = '2026-03-04T10:30';
  const outcome = readTyped({ at, alkalinityDkh: '8.4', notes: "'=half a bottle" }, {}, at);
  expect(outcome.ok && outcome.reading.notes).toBe("'=half a bottle");
});

it('lists every problem of a form at once', () => {
  const typed = { at: '2026-03-04T10:30', alkalinityDkh: 'high', phNbs: '12', grams: '5' };
  const outcome = readTyped(typed, {}, typed.at);
  expect(outcome.ok ? [] : outcome.problems).toHaveLength(2);
  const lot = readTyped({ at: typed.at, lot: 'A' }, {}, typed.at);
  expect(lot.ok ? '' : lot.problems.join()).toContain('goes with the next alkalinity reading');
  const power = readTyped({ at: typed.at, alkalinityDkh: '1e1' }, {}, typed.at);
  expect(power.ok ? '' : power.problems.join()).toContain('expected digits and one decimal mark');
  const empty = readTyped({ at: typed.at, accuracyDkh: '0.1' }, {}, typed.at);
  expect(empty.ok ? '' : empty.problems.join()).toContain('Nothing is typed yet');
});
