/**
 * 1 while a substrate is plentiful, falling straight to 0 as it runs out: a guard, not a law.
 * It keeps a process whose measured rate knows no substrate from asking for what is not there.
 */
export const scarcity = (molPerKg: number, plentifulMolPerKg: number): number =>
  Math.max(0, Math.min(1, molPerKg / plentifulMolPerKg));

/** How that changes with each mol/kg. */
export const scarcitySlope = (molPerKg: number, plentifulMolPerKg: number): number =>
  molPerKg > 0 && molPerKg < plentifulMolPerKg ? 1 / plentifulMolPerKg : 0;

/** Below this much inorganic carbon nothing grows as measured, mol/kg (common practice). */
export const PLENTIFUL_DIC = 2e-4;
