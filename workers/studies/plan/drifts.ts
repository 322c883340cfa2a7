/** Used up or piled up over weeks by what is dosed and what is not. */
export const drifts: readonly string[] = ['calcium', 'magnesium', 'salinity'];
