/** What a spreadsheet takes for a formula, in the letters of any keyboard; behind a mark it is words. */
const FORMULA = /^'*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;
const MARKED = /^'+[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;

/** Words as a cell that a spreadsheet does not run. */
export const wordCell = (words: string): string => (FORMULA.test(words) ? `'${words}` : words);

/** The words of such a cell. */
export const wordsOf = (cell: string): string => (MARKED.test(cell) ? cell.slice(1) : cell);
