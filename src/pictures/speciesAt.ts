import { equilibriumConstants, phTotalFromPhNbs } from '../../shared/seawater';

export interface SpeciesShares {
  readonly ph: number;
  /** Shares of the inorganic carbon, which sum to one. */
  readonly co2: number;
  readonly bicarbonate: number;
  readonly carbonate: number;
}

/** How inorganic carbon is shared out at a pH (NBS): the two steps of carbonic acid (lueker2000). */
export function speciesAt(water: { tempC: number; salinityPractical: number }) {
  const k = equilibriumConstants(water);
  return (ph: number): SpeciesShares => {
    const h = 10 ** -phTotalFromPhNbs(ph, k);
    const sum = h * h + k.k1 * h + k.k1 * k.k2;
    return {
      ph,
      co2: (h * h) / sum,
      bicarbonate: (k.k1 * h) / sum,
      carbonate: (k.k1 * k.k2) / sum,
    };
  };
}
