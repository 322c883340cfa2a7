/** What a spreadsheet takes for a formula, in the letters of any keyboard; a number is none. */
export const FORMULA = /^(?![-+]?\d+(?:\.\d+)?$)'*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;
const MARKED = /^'+[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;

/** The words of a cell that was marked as words when it was written. */
export const wordsOf = (cell: string): string => (MARKED.test(cell) ? cell.slice(1) : cell);
