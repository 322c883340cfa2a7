import { toDecimals, toFigures } from '../../../shared/units/digits';
import { lineTexts, lineValue, limitText } from '../lineTexts';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { dayOf } from '../../../shared/verdict/measures';
import { wordFor } from '../../../shared/scenario/words';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/turn';
import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';

export const limits = (dkh: number) => figure(toDecimals(dkh, 2));

export const dkhText = (dkh: number) => figure(dkh, 1);

export const plain = (value: number) => figure(value);

export const twoFigures = (value: number) => figure(toFigures(value, 2));

/** "2.44 g of sodium bicarbonate (for 300 L)", and scoops where the keeper has one. */
export function gramsText(
  gramsPerDay: number,
  additive: Carbonate,
  { tank }: Scenario,
  scoopG: number,
): string {
  const scoops = scoopG > 0 ? say.scoops(figure(gramsPerDay / scoopG, 1)) : '';
  return say.grams(plain(gramsPerDay), wordFor(additive), plain(Math.round(tank.volumeL))) + scoops;
}

/** What is passed, how far it goes, the limit, and on which day. */
export const passed = ({ quantity, worst, limit }: LineResult, firstH: number) =>
  [
    ...([lineTexts[quantity].name, figureText(lineValue(quantity, worst))] as const),
    ...([figureText(limitText(quantity, limit)), String(dayOf(firstH))] as const),
  ] as const;
