/** How far two lots of one reagent read apart, dKH: common practice. */
export const LOT_SIGMA_DKH = 0.3;

/** How a bottle of reagent reads beside the log's first one. */
export interface LotOffset {
  readonly byDkh: number;
  /** What is open of it, one σ. */
  readonly sigmaDkh: number;
}

/** What a fit found of the log's bottles: their names as they were opened, and its numbers. */
interface FittedLots {
  readonly lots: readonly string[];
  readonly estimates: readonly { readonly id: string; readonly value: number }[];
}

/** A bottle that the fit has not met may read as far off as two bottles commonly are. */
export function lotOffsetOf({ lots, estimates }: FittedLots, lot = ''): LotOffset {
  const index = lots.indexOf(lot);
  if (index < 0) return { byDkh: 0, sigmaDkh: LOT_SIGMA_DKH };
  const byDkh = estimates.find(({ id }) => id === `lot ${index}`)?.value ?? 0;
  // Forecast and offset were found together: the water's own spread holds what is open of both.
  return { byDkh, sigmaDkh: 0 };
}
