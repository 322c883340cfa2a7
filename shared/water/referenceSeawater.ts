/**
 * The ions of seawater at practical salinity 35, mol per kg of solution: reference composition of
 * Millero et al. 2008, table 4 (from memory), times the mass fraction of water. Calcium and
 * magnesium are the keeper's own; borate, sulfate follow the totals the constants were made with.
 */
const WATER_FRACTION = 1 - 0.03516504;

export const referenceMolPerKg = {
  Na: 0.4860597 * WATER_FRACTION,
  K: 0.0105797 * WATER_FRACTION,
  Sr: 0.000094 * WATER_FRACTION,
  Cl: 0.5657647 * WATER_FRACTION,
} as const;

/** Dissolved salt, g per kg of solution, for one unit of practical salinity (Millero et al. 2008). */
export const SALT_G_PER_KG_PER_PSU = 35.16504 / 35;
