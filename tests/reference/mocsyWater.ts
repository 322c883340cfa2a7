import { carbonateFromAlkalinityDic, type CarbonateSystem } from '../../shared/seawater';

const dicUmolPerKg = 2058.185;

function solved(dic = dicUmolPerKg): CarbonateSystem {
  const water = { alkalinityUmolPerKg: 2300, tempC: 18, salinityPractical: 35 };
  return carbonateFromAlkalinityDic({ ...water, dicUmolPerKg: dic });
}

function revelleFactor(): number {
  const step = 0.1;
  const change = solved(dicUmolPerKg + step).pco2Uatm - solved(dicUmolPerKg - step).pco2Uatm;
  return (change / (2 * step)) * (dicUmolPerKg / solved().pco2Uatm);
}

/** Rows of published.csv from the reference output shipped with mocsy. */
export const mocsyGot: Record<string, () => number> = {
  P044: () => solved().phTotal,
  P045: () => solved().pco2Uatm,
  P046: () => solved().fco2Uatm,
  P047: () => solved().hco3UmolPerKg,
  P048: () => solved().co3UmolPerKg,
  P050: () => solved().omegaCalcite,
  P051: revelleFactor,
};
