import { spokenDay } from '../../../shared/log/spokenTime';
import { toDecimals, toFigures } from '../../../shared/units/digits';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { figure } from '../../../shared/words/figure';
import { say as quantities } from '../../../shared/words/quantities';
import { say } from '../../../shared/words/season';
import type { SeasonTold } from '../../ask/outcome';

export type Season = SeasonTold['season'];

export type Moved = Season['why']['moved'][number];

export type Since = NonNullable<Moved['since']>;

export type SeasonId = Moved['id'];

export type First = Season['first'];

export type Poured = Extract<First, { kind: 'first' }>['poured'];

const MINUS = '−';

export const decimals = (id: SeasonId) => (id === 'salinity' ? 1 : 0);

const unit = (id: SeasonId) => (id === 'salinity' ? 'ppt' : 'mg/L');

export const name = (id: SeasonId): string => quantities.limits[id];

export const begins = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const value = (id: SeasonId, number: number): string =>
  `${figure(number, decimals(id))} ${unit(id)}`;

/** "+12", "−0.4"; what is told as nothing has no sign. */
export function signed(id: SeasonId, number: number): string {
  const size = figure(Math.abs(number), decimals(id));
  if (toDecimals(Math.abs(number), decimals(id)) === 0) return size;
  return number < 0 ? `${MINUS}${size}` : `+${size}`;
}

export const withUnit = (id: SeasonId, number: number): string =>
  `${signed(id, number)} ${unit(id)}`;

export const grams = (number: number): string => figure(threeFigures(number));

export const litres = (number: number): string => figure(threeFigures(number));

export const roughly = (number: number): string => figure(toFigures(number, 2));

export const day = (at: string): string => spokenDay(at);

/** "calcium, magnesium and salinity". */
export const listed = (names: readonly string[]): string =>
  names.length < 2
    ? names.join('')
    : quantities.listed(names.slice(0, -1).join(', '), names.at(-1)!);

/** "dosing pumps +1553, coral growth −1258". */
export const sharesText = (id: SeasonId, shares: Since['shares']): string =>
  shares.map(({ mover, moved }) => say.share(say.movers[mover], signed(id, moved))).join(', ');
