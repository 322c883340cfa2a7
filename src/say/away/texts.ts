import { toFigures } from '../../../shared/units/digits';
import { beyondText } from '../drill/boughtText';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold, NobodyLooks } from '../../ask/outcome';

export type Unnoticed = NobodyLooks['failures'][number];

export const dkh = (value: number) => figure(value, 1);

/** As fine as anybody fills, for a column of litres. */
export const litres = (value: number) => figure(toFigures(value, 3));

/** The same with its unit; less than a litre as a jug has it. */
export const filled = (value: number) =>
  value > 0 && value < 1 ? `${litres(1000 * value)} mL` : `${litres(value)} L`;

export const downDays = (value: number) => figure(Math.floor(value * 10) / 10);

export const percent = (share: number) => figure(Math.round(100 * share));

/** "06:00". */
export const hourText = (hour: number) => `${String(Math.floor(hour)).padStart(2, '0')}:00`;

/** "pH above 8.6" of every line that is told apart, each once. */
export const beyondTexts = (lines: readonly LineResult[]): string =>
  lines.map(beyondText).join(', ');

export type Vessel = AwayTold['away']['vessels'][number];

export const vesselName = ({ name }: Vessel): string =>
  name === undefined ? say.panel.reservoir : say.named(name);

/** Days that so much of a vessel lasts at worst. */
export const daysOf = (most: number, { dailyMostL }: Vessel): string => downDays(most / dailyMostL);
