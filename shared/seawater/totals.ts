// Amounts of the ions that keep a constant ratio to salinity, in mol per kg of seawater.
// Salinity over chlorinity is 1.80655.
const perSalinity = 1 / 1.80655;

export type BorateOption = 'uppstrom1974' | 'lee2010';

const boratePer35: Record<BorateOption, number> = { uppstrom1974: 0.0004157, lee2010: 0.0004326 };

// The two differ by 4 %, which moves pH by up to 0.033 at the same alkalinity and DIC.
export function totalBorateMolPerKg(
  salinityPractical: number,
  option: BorateOption = 'uppstrom1974',
): number {
  return (boratePer35[option] * salinityPractical) / 35;
}

// morrisRiley1966
export function totalSulfateMolPerKg(salinityPractical: number): number {
  return (0.14 / 96.062) * perSalinity * salinityPractical;
}

// riley1965
export function totalFluorideMolPerKg(salinityPractical: number): number {
  return (0.000067 / 18.998) * perSalinity * salinityPractical;
}

// rileyTongudai1967; the divisor 40.087 is the molar mass printed there, kept so that the ratio
// of mass to chlorinity is theirs.
export function totalCalciumMolPerKg(salinityPractical: number): number {
  return (0.02128 / 40.087) * perSalinity * salinityPractical;
}
