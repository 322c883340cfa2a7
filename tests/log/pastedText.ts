import fc from 'fast-check';

const two = (n: number) => String(n).padStart(2, '0');

/** A day, and as a keeper writes it; one style a text, as one keeper has. */
const dates = {
  iso: (y: number, m: number, d: number) => `${y}-${two(m)}-${two(d)}`,
  german: (y: number, m: number, d: number) => `${d}.${m}.${y}`,
  padded: (y: number, m: number, d: number) => `${two(d)}.${two(m)}.${y}`,
} as const;

const clocks: readonly ((h: number, m: number) => string)[] = [
  (h, m) => `${h}:${two(m)}`,
  (h, m) => `${two(h)}:${two(m)} Uhr`,
  (h, m) => `${h}.${two(m)} Uhr`,
  (h, m) => `um ${h}:${two(m)}`,
  (h, m) => `${h % 12 || 12}:${two(m)} ${h < 12 ? 'am' : 'pm'}`,
];

const DIRT = ['fed too much', 'KH?', '2026-02-31 8.4', 'Wasserwechsel 20 %', '17.13.2026 8,1'];

const ONE = fc.record({
  minute: fc.integer({ min: 0, max: 59 }),
  hour: fc.integer({ min: 0, max: 23 }),
  clock: fc.boolean(),
  tenths: fc.integer({ min: 50, max: 149 }),
  kind: fc.constantFrom('test', 'test', 'test', 'test', 'empty', 'dirt'),
  dirt: fc.constantFrom(...DIRT),
  unit: fc.constantFrom('', '', ' dKH', ' KH', ' °dH'),
});

/** Lines of tests on days one after the other, with empty and dirty ones among them. */
export const pastedText = fc
  .record({
    date: fc.constantFrom<keyof typeof dates>('iso', 'german', 'padded'),
    clock: fc.constantFrom(...clocks),
    comma: fc.boolean(),
    between: fc.constantFrom(' ', ', ', ',', ';', '; ', '\t'),
    newline: fc.constantFrom('\n', '\r\n'),
    lines: fc.array(ONE, { minLength: 1, maxLength: 12 }),
  })
  .map(({ date, clock, comma, between, newline, lines }) => {
    const wanted: { at: string; dkh: number }[] = [];
    const dirty: number[] = [];
    let empty = 0;
    const text = lines.map((line, i) => {
      // The first line says how the text is written.
      const kind = i === 0 ? 'test' : line.kind;
      if (kind === 'empty') {
        empty++;
        return '';
      }
      if (kind === 'dirt') {
        dirty.push(i + 1);
        return line.dirt;
      }
      const day = i + 1;
      const time = line.clock ? `${two(line.hour)}:${two(line.minute)}` : '12:00';
      const number = (line.tenths / 10).toFixed(1);
      wanted.push({ at: `2026-03-${two(day)}T${time}`, dkh: Number(number) });
      const cells = [
        dates[date](2026, 3, day),
        ...(line.clock ? [clock(line.hour, line.minute)] : []),
        `${comma ? number.replace('.', ',') : number}${line.unit}`,
      ];
      return cells.join(between);
    });
    return { text: text.join(newline), wanted, dirty, empty };
  });
