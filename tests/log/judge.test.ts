import { expect, it } from 'vitest';
import { judgedSentence } from '../../src/say/log/judged';
import { judge, strays } from '../../shared/log/judge';
import { inOwnUnits, readTyped, typedOf } from '../../shared/log/typedReading';

const forecast = { timesH: [0, 24, 48], dkh: [8.5, 8.4, 8.2], spreadDkh: [0.1, 0.08, 0.08] };

const said = (dkh: number) => judgedSentence(dkh, judge(dkh, 0.06, 36, forecast)!);

it('judges a reading against what was expected, test and forecast together', () => {
  // √(0.08² + 0.06²) = 0.1, worked by hand.
  const judged = judge(8.1, 0.06, 36, forecast)!;
  expect(judged.standardised).toBeCloseTo(-2, 6);
  expect(judgedSentence(8.1, judge(8.1, 0.08, 36, forecast)!)).toBe(
    '8.1 where 8.3 ± 0.2 was expected: within noise.',
  );
  expect(said(7.9)).toContain('far below what noise explains');
  expect(said(8.55)).toContain('higher than noise usually makes it');
  expect(judge(8.1, 0.15, 49, forecast)).toBeUndefined();
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
  const empty = readTyped({ at: typed.at, lot: 'A' }, {}, typed.at);
  expect(empty.ok ? '' : empty.problems.join()).toContain('Nothing is typed yet');
});
