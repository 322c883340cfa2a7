import { fixed, toFigures } from '../../shared/units/digits';
import { say } from '../../shared/words/verdict';
import { HIGHEST_PH_NBS } from '../../shared/trace/columns';

/** pH as the screen shows it: no false precision beyond the constants' range. */
export const phText = (ph: number): string =>
  ph > HIGHEST_PH_NBS ? `>${HIGHEST_PH_NBS}` : fixed(ph, 2);

/** A stretch of time in the largest unit that fits: hours for two days, days beyond. */
export const lengthText = (hours: number): string =>
  hours < 48
    ? say.length.hours(String(Math.round(hours)))
    : say.length.days(String(Math.round(hours / 24)));

/** Three figures are as many as a keeper measures. */
export const litresText = (litres: number): string => `${toFigures(litres, 3)} L`;

/** What rounds to nothing has no sign. */
export function signed(value: number, digits: number): string {
  const size = fixed(Math.abs(value), digits);
  return Number(size) === 0 ? size : `${value < 0 ? '−' : '+'}${size}`;
}
