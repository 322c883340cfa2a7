import {
  carbonateFromAlkalinityDic,
  carbonateFromAlkalinityPco2,
  meqPerLFromDkh,
  totalCalciumMolPerKg,
  type CarbonateSystem,
} from '../../shared/seawater';

/** The assumptions behind the dose tables (tables/README.md). */
export const tableTempC = 25;
export const tableSalinity = 35;
export const tableKgPerL = 1.02334;
export const tableNbsMinusTotal = 0.137;
export const wetPerDry = 0.97;

export interface DosedWater {
  alkalinityUmolPerKg: number;
  dicUmolPerKg: number;
  calciumUmolPerKg: number;
  salinityPractical: number;
}

export const umolPerKgFromTableDkh = (dkh: number) => (meqPerLFromDkh(dkh) * 1000) / tableKgPerL;

/** The tank before the dose, in equilibrium with its room. */
export function startWater(dkh: number, ppmDry: number): DosedWater {
  const water = {
    alkalinityUmolPerKg: umolPerKgFromTableDkh(dkh),
    calciumUmolPerKg: totalCalciumMolPerKg(tableSalinity) * 1e6,
    salinityPractical: tableSalinity,
  };
  return { ...water, dicUmolPerKg: withAir(water, ppmDry).dicUmolPerKg };
}

export function closed(water: DosedWater): CarbonateSystem {
  return carbonateFromAlkalinityDic({ ...water, tempC: tableTempC });
}

export function withAir(water: Omit<DosedWater, 'dicUmolPerKg'>, ppmDry: number): CarbonateSystem {
  return carbonateFromAlkalinityPco2({
    ...water,
    tempC: tableTempC,
    pco2Uatm: wetPerDry * ppmDry,
  });
}
