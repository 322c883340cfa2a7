import { expect, it } from 'vitest';
import { cellsCsv } from '../../src/files/tableCsv';

// RFC 4180, section 2: lines end in CRLF; cells with commas or quotes stand in quotes.
it('writes rows that a spreadsheet reads back as they were', async () => {
  expect(
    await cellsCsv([
      ['a', 'b, c'],
      ['say "x"', '−0.25'],
    ]),
  ).toBe('a,"b, c"\r\n"say ""x""",-0.25\r\n');
});

it('does not let a name become a formula, and takes no number for one', async () => {
  expect(await cellsCsv([['=1+1', '@x', '-cmd', '+0.5', '-3', '＝x']])).toBe(
    `"'=1+1","'@x","'-cmd",+0.5,-3,"'＝x"\r\n`,
  );
});

it('writes a plain decimal point whatever sign the page shows', async () => {
  expect(await cellsCsv([['8,52', '−0,25', '1, 2']])).toBe('8.52,-0.25,"1, 2"\r\n');
});
