import { localTimeOf } from '../../shared/log/localTime';

/** Kinds of dirt, each with a cell row for the i-th line, and a word of the reason it must meet. */
const dirt: readonly (readonly [kind: string, reason: RegExp, row: (i: number) => string])[] = [
  [
    'a day that is not in the calendar',
    /^When: got “2026-02-31/,
    (i) => `2026-02-31 10:${two(i % 60)},8.3,420,35,`,
  ],
  ['no day', /^When: got “”/, () => ',8.3,420,35,'],
  ['a word for a number', /^Alkalinity: got “n\/a”/, (i) => `${day(i)},n/a,420,35,`],
  [
    'a number outside its range',
    /^Alkalinity: got “83”.*0\.5 to 30 dKH/,
    (i) => `${day(i)},83,420,35,`,
  ],
  [
    'a specific gravity among salinities',
    /^Salinity: got “1\.026”.*specific gravity/,
    (i) => `${day(i)},8.3,420,1.026,`,
  ],
  ['more cells than headers', /^6 cells under 5 headers/, (i) => `${day(i)},8.3,420,35,,8`],
  ['nothing measured', /^Nothing was measured/, (i) => `${day(i)},,,,`],
  ['the same line again', /^The same is on line 2/, () => FIRST],
  ['a decimal comma among points', /^Calcium: got “420,5”/, (i) => `${day(i)},8.3,"420,5",35,`],
  ['a note beyond all bounds', /^Notes: got/, (i) => `${day(i)},8.3,420,35,${'x'.repeat(1001)}`],
];

const two = (n: number) => String(n).padStart(2, '0');
const START_H = 20_454 * 24;
const day = (i: number) => localTimeOf(START_H + i * 6).replace('T', ' ');
const FIRST = `${day(-1)},8.4,420,35,"the first, with a comma"`;

/** A thousand rows: nine in ten clean, some of them with notes over two lines, one in ten dirty, one in fifty empty. */
export function dirtyFile() {
  const lines = ['when,alkalinity (dKH),calcium (mg/L),salinity (ppt),notes', FIRST];
  const wanted: { line: number; reason: RegExp; kind: string }[] = [];
  let line = 3;
  let [clean, empty] = [1, 0];
  for (let i = 0; i < 999; i++) {
    if (i % 10 === 3) {
      const [kind, reason, row] = dirt[Math.floor(i / 10) % dirt.length]!;
      lines.push(row(i));
      wanted.push({ line, reason, kind });
      line++;
    } else if (i % 50 === 7) {
      lines.push('');
      empty++;
      line++;
    } else {
      const twoLines = i % 25 === 1;
      lines.push(
        `${day(i)}${i % 25 === 2 ? ' Uhr' : ''},${(8 + (i % 7) / 10).toFixed(1)},42${i % 10},35.${i % 5},${twoLines ? '"one\ntwo"' : ''}`,
      );
      clean++;
      line += twoLines ? 2 : 1;
    }
  }
  return { text: `${lines.join('\n')}\n`, wanted, clean, empty, kinds: dirt.length };
}
