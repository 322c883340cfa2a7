import { meqPerLFromDkh } from '../seawater/alkalinity';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { seawaterDensityKgPerM3 } from '../seawater/density';
import { additives, oxidisedMeqPerG, type AdditiveId } from '../species/additives';
import { SALT_G_PER_KG_PER_PSU } from '../water/referenceSeawater';

const MOLAR_MASS_G = { Ca: molarMassGPerMol({ Ca: 1 }), Mg: molarMassGPerMol({ Mg: 1 }) };

/** Grams that raise so many litres by so many dKH; of acetate and formate once oxidised. */
export const gramsForDkh = (additive: AdditiveId, dkh: number, litres: number): number =>
  (meqPerLFromDkh(dkh) * litres) / oxidisedMeqPerG(additive);

/** Calcium or magnesium in one gram, mg. */
export function mgPerGram(additive: AdditiveId, metal: 'Ca' | 'Mg'): number {
  const { gives, molarMassG } = additives[additive];
  const mol = (gives as Partial<Record<'Ca' | 'Mg', number>>)[metal] ?? 0;
  return (mol * MOLAR_MASS_G[metal] * 1000) / molarMassG;
}

/** Grams that raise so many litres of water by so many mg/L of calcium or magnesium. */
export const gramsForMgPerL = (
  additive: AdditiveId,
  metal: 'Ca' | 'Mg',
  mgPerL: number,
  litres: number,
): number => (mgPerL * litres) / mgPerGram(additive, metal);

/** Dry sea salt in so many litres of new water, g. */
export const drySaltGrams = (litres: number, salinityPractical: number, tempC: number): number =>
  litres *
  (seawaterDensityKgPerM3({ tempC, salinityPractical }) / 1000) *
  salinityPractical *
  SALT_G_PER_KG_PER_PSU;

/** Bagged mixes hold bound water: 38–40 g make a litre of salinity 35, not 36 (common practice). */
const BAGGED_PER_DRY = 39 / 36;

/** Salt mix out of the bag for so many litres of new water, g; weigh, then measure. */
export const baggedSaltGrams = (...water: Parameters<typeof drySaltGrams>): number =>
  BAGGED_PER_DRY * drySaltGrams(...water);
