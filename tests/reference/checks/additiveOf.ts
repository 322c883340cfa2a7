import type { AdditiveId } from '../../../shared/species/additives';

/** What a compound of the reference tables is called in our own table of additives, where it is there. */
export const additiveOf: Partial<Record<string, AdditiveId>> = {
  CaOH2: 'calciumHydroxide',
  Na2CO3: 'sodiumCarbonate',
  NaHCO3: 'sodiumBicarbonate',
  NaOH: 'sodiumHydroxide',
  CaCl2_2H2O: 'calciumChlorideDihydrate',
  CaCl2: 'calciumChloride',
  MgCl2_6H2O: 'magnesiumChlorideHexahydrate',
  MgSO4_7H2O: 'magnesiumSulfateHeptahydrate',
  CaAc2: 'calciumAcetate',
  CaFo2: 'calciumFormate',
};
