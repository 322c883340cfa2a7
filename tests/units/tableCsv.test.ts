import { expect, it } from 'vitest';
import { rowsCsv } from '../../src/files/tableCsv';

// RFC 4180, section 2: lines end in CRLF; cells with commas or quotes stand in quotes.
it('writes rows that a spreadsheet reads back as they were', () => {
  expect(
    rowsCsv([
      ['a', 'b, c'],
      ['say "x"', '−0.25'],
    ]),
  ).toBe('a,"b, c"\r\n"say ""x""",-0.25\r\n');
});

it('does not let a name become a formula', () => {
  expect(rowsCsv([['=1+1', '@x', '-cmd', '+0.5']])).toBe("'=1+1,'@x,'-cmd,+0.5\r\n");
});

it('writes a plain decimal point whatever sign the page shows', () => {
  expect(rowsCsv([['8,52', '−0,25', '1, 2']])).toBe('8.52,-0.25,"1, 2"\r\n');
});
