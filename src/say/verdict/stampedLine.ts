import { least } from 'd3-array';
import type { LineResult } from '../../../shared/verdict/lineResult';

/** So far above or below its line alkalinity is the trouble, whatever was passed before it, dKH. */
const FAR_DKH = 3;

const isFar = ({ id, quantity, worst, limit }: LineResult): boolean =>
  id === 'alkalinityHarm' || (quantity === 'alkalinity' && Math.abs(worst - limit) > FAR_DKH);

const isHarm = ({ id }: LineResult): boolean => id.endsWith('Harm');

const soonest = (lines: readonly LineResult[]) => least(lines, ({ firstH }) => firstH!);

/** What a stamp names: alkalinity where it is far off, else what does harm, else what is passed first. */
export function stampedLine(broken: readonly LineResult[]): LineResult | undefined {
  const gravest = broken.find(isFar) ?? soonest(broken.filter(isHarm));
  return soonest(gravest ? broken.filter(({ quantity }) => quantity === gravest.quantity) : broken);
}
