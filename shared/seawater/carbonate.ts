import { type CarbonateSystem, describe } from './carbonateSystem';
import { requireBetween, requireWater } from './require';
import { CarbonateSolver } from './solver';
import { type BorateOption, totalBorateMolPerKg } from './totals';

/** Totals left out follow salinity; phosphate and ammonia left out are zero. */
export interface WaterInput {
  alkalinityUmolPerKg: number;
  tempC: number;
  salinityPractical: number;
  calciumUmolPerKg?: number;
  borateUmolPerKg?: number;
  sulfateUmolPerKg?: number;
  fluorideUmolPerKg?: number;
  phosphateUmolPerKg?: number;
  ammoniaUmolPerKg?: number;
  borateOption?: BorateOption;
}

const mostUmolPerKg = 1e6;

function solverFor(water: WaterInput): CarbonateSolver {
  requireWater(water.tempC, water.salinityPractical);
  requireBetween('alkalinityUmolPerKg', water.alkalinityUmolPerKg, -mostUmolPerKg, mostUmolPerKg);
  const solver = new CarbonateSolver();
  solver.setConditions(water.tempC, water.salinityPractical);
  solver.setTotalsFromSalinity(water.salinityPractical);
  const borate = totalBorateMolPerKg(water.salinityPractical, water.borateOption);
  solver.calcium = molPerKg('calciumUmolPerKg', water.calciumUmolPerKg, solver.calcium);
  solver.borate = molPerKg('borateUmolPerKg', water.borateUmolPerKg, borate);
  solver.sulfate = molPerKg('sulfateUmolPerKg', water.sulfateUmolPerKg, solver.sulfate);
  solver.fluoride = molPerKg('fluorideUmolPerKg', water.fluorideUmolPerKg, solver.fluoride);
  solver.phosphate = molPerKg('phosphateUmolPerKg', water.phosphateUmolPerKg, 0);
  solver.ammonia = molPerKg('ammoniaUmolPerKg', water.ammoniaUmolPerKg, 0);
  return solver;
}

function molPerKg(quantity: string, umolPerKg: number | undefined, otherwise: number): number {
  if (umolPerKg === undefined) return otherwise;
  requireBetween(quantity, umolPerKg, 0, mostUmolPerKg);
  return umolPerKg * 1e-6;
}

export function carbonateFromAlkalinityDic(
  water: WaterInput & { dicUmolPerKg: number },
): CarbonateSystem {
  requireBetween('dicUmolPerKg', water.dicUmolPerKg, 0, mostUmolPerKg);
  const solver = solverFor(water);
  solver.solve(water.alkalinityUmolPerKg * 1e-6, water.dicUmolPerKg * 1e-6);
  return describe(solver);
}

export function carbonateFromAlkalinityPh(
  water: WaterInput & { phTotal: number },
): CarbonateSystem {
  requireBetween('phTotal', water.phTotal, 0, 14);
  const solver = solverFor(water);
  const dic = solver.dicFromPh(water.alkalinityUmolPerKg * 1e-6, water.phTotal);
  if (!(dic >= 0)) {
    throw new RangeError(
      `phTotal is ${water.phTotal}; with alkalinity ${water.alkalinityUmolPerKg} µmol/kg expected a lower pH, ` +
        'since this one leaves a negative amount of DIC',
    );
  }
  return describe(solver);
}

export function carbonateFromAlkalinityPco2(
  water: WaterInput & { pco2Uatm: number },
): CarbonateSystem {
  requireBetween('pco2Uatm', water.pco2Uatm, 0, 1e9);
  const solver = solverFor(water);
  solver.dicFromPco2(water.alkalinityUmolPerKg * 1e-6, water.pco2Uatm);
  return describe(solver);
}
