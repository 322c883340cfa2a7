/** How wide letters are at most, in parts of their size, in the widest of the usual faces. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijl.,:;'’|! ]/, 0.32],
  [/[rtfI()[\]/-]/, 0.42],
  [/[cszJ]/, 0.56],
  [/[aekovxyFLT]/, 0.62],
  [/[bdghnpquäöüßáéíóú\d]/, 0.65],
  [/[A-Z]/, 0.8],
];
const WIDEST = 1.05;
const WIDE = /[MWmw]/;

const measured = new Map<string, number>();

function widthOf(letter: string): number {
  const known = measured.get(letter);
  if (known !== undefined) return known;
  const usual = WIDTHS.find(([these]) => these.test(letter))?.[1] ?? WIDEST;
  const width = WIDE.test(letter) ? WIDEST : usual;
  measured.set(letter, width);
  return width;
}

/** What a text takes at most, px, in the usual letters of the page: an estimate, where none can be measured. */
export const roomOf = (text: string, fontPx: number): number =>
  [...text].reduce((sum, letter) => sum + widthOf(letter) * fontPx, 0);

/** A name, cut where there is no more room for it. */
export function fittedName(name: string, fontPx: number, roomPx: number): string {
  if (roomOf(name, fontPx) <= roomPx) return name;
  const letters = [...name];
  let kept = letters.length;
  while (kept > 0 && roomOf(`${letters.slice(0, kept).join('').trimEnd()}…`, fontPx) > roomPx)
    kept--;
  return `${letters.slice(0, kept).join('').trimEnd()}…`;
}
