import { mgPerGram } from '../../../shared/recipe/gramsFor';
import { dissolve, type AdditiveId } from '../../../shared/species/additives';
import { saltKg } from '../../../shared/species/block';
import { SALT_G_PER_KG_PER_PSU } from '../../../shared/water/referenceSeawater';

export type Metal = 'calcium' | 'magnesium';
export const metals: readonly Metal[] = ['calcium', 'magnesium'];
export const METAL_OF = { calcium: 'Ca', magnesium: 'Mg' } as const;

/** What raises them without alkalinity; the first of each is offered, the second told beside it. */
export const salts: Readonly<Record<Metal, readonly AdditiveId[]>> = {
  calcium: ['calciumChlorideDihydrate', 'calciumChloride'],
  magnesium: ['magnesiumChlorideHexahydrate', 'magnesiumSulfateHeptahydrate'],
};

/** Salinity that comes with a milligram a litre of the metal. */
export function pptPerMgPerL(metal: Metal, additive: AdditiveId = salts[metal][0]!): number {
  const saltG = 1000 * saltKg(dissolve(additive, 1));
  return saltG / mgPerGram(additive, METAL_OF[metal]) / SALT_G_PER_KG_PER_PSU;
}
