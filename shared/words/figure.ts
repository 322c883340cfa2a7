import { fixed, toDecimals, toFigures } from '../units/digits';
import { writing } from './writing';

/** That of the language spoken here, until its reader chooses one. */
let sign: '.' | ',' = writing.decimal;
export const writeDecimal = (chosen: 'point' | 'comma'): void => {
  sign = chosen === 'comma' ? ',' : '.';
};

/** A number that is written already, with the decimal sign of its reader. */
export const figureText = (text: string): string => text.replace('.', sign);

/** More figures than these are what binary arithmetic leaves behind: 3.43 · 10 = 34.300000000000004. */
const FIGURES = 12;

/** A number with so many decimals, or with those that it has, for a sentence; what rounds to nothing has no sign. */
export const figure = (value: number, decimals?: number): string =>
  figureText(
    decimals === undefined
      ? String(toFigures(value, FIGURES))
      : fixed(toDecimals(value, decimals) + 0, decimals),
  );

/** What a use is known to, dKH/day: finer than a hundredth nothing is, however many readings there are. */
export const giveOrTake = (byDkhPerDay: number): string => figure(Math.max(0.01, byDkhPerDay), 2);
