import { SeawaterConstants } from './constants';
import { type BorateOption, totalBorateMolPerKg } from './totals';
import { requireWater } from './require';

export interface EquilibriumConstants {
  k0: number;
  k1: number;
  k2: number;
  kb: number;
  kw: number;
  kf: number;
  ks: number;
  kp1: number;
  kp2: number;
  kp3: number;
  kNh4: number;
  kspAragonite: number;
  kspCalcite: number;
  hTotalPerHFree: number;
  hSwsPerHTotal: number;
  fH: number;
  phTotalOverPhNbs: number;
  fco2PerPco2: number;
  totalBorateUmolPerKg: number;
}

export interface Water {
  tempC: number;
  salinityPractical: number;
  borateOption?: BorateOption;
}

/** K, not pK, per kg of seawater: total scale, ks free; k0 in mol/kg/atm. */
export function equilibriumConstants({
  tempC,
  salinityPractical,
  borateOption,
}: Water): EquilibriumConstants {
  requireWater(tempC, salinityPractical);
  const k = new SeawaterConstants();
  k.set(tempC, salinityPractical);
  return {
    k0: k.k0,
    k1: k.k1,
    k2: k.k2,
    kb: k.kb,
    kw: k.kw,
    kf: k.kf,
    ks: k.ks,
    kp1: k.kp1,
    kp2: k.kp2,
    kp3: k.kp3,
    kNh4: k.kNh4,
    kspAragonite: k.kspAragonite,
    kspCalcite: k.kspCalcite,
    hTotalPerHFree: k.hTotalPerHFree,
    hSwsPerHTotal: k.hSwsPerHTotal,
    fH: k.fH,
    phTotalOverPhNbs: k.phTotalOverPhNbs,
    fco2PerPco2: k.fco2PerPco2,
    totalBorateUmolPerKg: totalBorateMolPerKg(salinityPractical, borateOption) * 1e6,
  };
}
