import { phNbsFromPhTotal } from './phNbs';
import type { CarbonateSolver } from './solver';

/** A solved water, in the units of the literature. */
export interface CarbonateSystem {
  alkalinityUmolPerKg: number;
  dicUmolPerKg: number;
  phTotal: number;
  phFree: number;
  phSws: number;
  phNbs: number;
  pco2Uatm: number;
  fco2Uatm: number;
  co2UmolPerKg: number;
  hco3UmolPerKg: number;
  co3UmolPerKg: number;
  omegaAragonite: number;
  omegaCalcite: number;
  boh4UmolPerKg: number;
  ohUmolPerKg: number;
  hFreeUmolPerKg: number;
  hso4UmolPerKg: number;
  hfUmolPerKg: number;
  nh3UmolPerKg: number;
  phosphateAlkalinityUmolPerKg: number;
}

/** Alkalinity is summed from the species, not repeated from the input. */
export function describe(solver: CarbonateSolver): CarbonateSystem {
  const { k, hTotal: h } = solver;
  const hFree = h / k.hTotalPerHFree;
  const boh4 = (solver.borate * k.kb) / (k.kb + h);
  const oh = k.kw / h;
  const hso4 = (solver.sulfate * hFree) / (hFree + k.ks);
  const hf = (solver.fluoride * h) / (h + k.kf);
  const nh3 = (solver.ammonia * k.kNh4) / (k.kNh4 + h);
  const hpo4 = k.kp1 * k.kp2 * h;
  const po4 = hpo4 * (k.kp3 / h);
  const phosphateSum = h * h * h + k.kp1 * h * h + hpo4 + po4;
  const phosphateAlkalinity = (solver.phosphate * (hpo4 + 2 * po4 - h * h * h)) / phosphateSum;
  const carbonateAlkalinity = solver.hco3MolPerKg + 2 * solver.co3MolPerKg;
  const alkalinity =
    carbonateAlkalinity + boh4 + oh + nh3 + phosphateAlkalinity - hFree - hso4 - hf;
  return {
    alkalinityUmolPerKg: alkalinity * 1e6,
    dicUmolPerKg: (solver.co2MolPerKg + solver.hco3MolPerKg + solver.co3MolPerKg) * 1e6,
    phTotal: solver.phTotal,
    phFree: solver.phTotal + Math.log10(k.hTotalPerHFree),
    phSws: solver.phTotal - Math.log10(k.hSwsPerHTotal),
    phNbs: phNbsFromPhTotal(solver.phTotal, k),
    pco2Uatm: solver.pco2Uatm,
    fco2Uatm: solver.pco2Uatm * k.fco2PerPco2,
    co2UmolPerKg: solver.co2MolPerKg * 1e6,
    hco3UmolPerKg: solver.hco3MolPerKg * 1e6,
    co3UmolPerKg: solver.co3MolPerKg * 1e6,
    omegaAragonite: solver.omegaAragonite,
    omegaCalcite: (solver.calcium * solver.co3MolPerKg) / k.kspCalcite,
    boh4UmolPerKg: boh4 * 1e6,
    ohUmolPerKg: oh * 1e6,
    hFreeUmolPerKg: hFree * 1e6,
    hso4UmolPerKg: hso4 * 1e6,
    hfUmolPerKg: hf * 1e6,
    nh3UmolPerKg: nh3 * 1e6,
    phosphateAlkalinityUmolPerKg: phosphateAlkalinity * 1e6,
  };
}
