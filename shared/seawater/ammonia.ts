import { SeawaterConstants } from './constants';
import { requireBetween, requireWater } from './require';

export interface AmmoniaInput {
  phTotal: number;
  tempC: number;
  salinityPractical: number;
}

/** Share of total ammonia that is NH3 (cleggWhitfield1995, per kg of seawater). */
export function unionisedAmmoniaFraction({
  phTotal,
  tempC,
  salinityPractical,
}: AmmoniaInput): number {
  requireBetween('phTotal', phTotal, 0, 14);
  requireWater(tempC, salinityPractical);
  const k = new SeawaterConstants();
  k.set(tempC, salinityPractical);
  return k.kNh4 / (k.kNh4 + 10 ** -phTotal);
}
