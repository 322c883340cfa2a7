import { CarbonateSolver, totalBorateMolPerKg, totalFluorideMolPerKg } from '../../shared/seawater';

const tempC = 18;
const salinity = 35;
const alkalinity = 2300e-6;
const dic = 2000e-6;

/** The water of Table 2 of Orr et al. 2018: Lee's borate, and the KF of Dickson & Riley 1979. */
function paperSolver(): CarbonateSolver {
  const solver = new CarbonateSolver();
  const k = solver.k;
  solver.setConditions(tempC, salinity);
  solver.setTotalsFromSalinity(salinity);
  solver.borate = totalBorateMolPerKg(salinity, 'lee2010');
  const ionic = (19.924 * salinity) / (1000 - 1.005 * salinity);
  const lnKfMolal = 1590.2 / (tempC + 273.15) - 12.641 + 1.525 * Math.sqrt(ionic);
  k.kf = Math.exp(lnKfMolal) * (1 - 0.001005 * salinity) * k.hTotalPerHFree;
  const hSwsPerHTotal = 1 + totalFluorideMolPerKg(salinity) / k.kf;
  k.kw *= k.hSwsPerHTotal / hSwsPerHTotal;
  k.hSwsPerHTotal = hSwsPerHTotal;
  return solver;
}

/** Central difference of a result by alkalinity or DIC, both in the paper's units. */
function slope(input: 'alkalinity' | 'dic', result: (solver: CarbonateSolver) => number): number {
  const solver = paperSolver();
  const step = 1e-7;
  const at = (offset: number) => {
    if (input === 'alkalinity') solver.solve(alkalinity + offset, dic);
    else solver.solve(alkalinity, dic + offset);
    return result(solver);
  };
  return (at(step) - at(-step)) / (2 * step * 1e6);
}

/** Our values for the rows of published.csv from that table. */
export const orr2018Got: Record<string, () => number> = {
  P033: () => slope('alkalinity', (s) => s.pco2Uatm),
  P034: () => slope('alkalinity', (s) => s.co2MolPerKg * 1e6),
  P035: () => slope('alkalinity', (s) => s.hco3MolPerKg * 1e6),
  P036: () => slope('alkalinity', (s) => s.co3MolPerKg * 1e6),
  P037: () => slope('alkalinity', (s) => s.omegaAragonite),
  P038: () => slope('dic', (s) => s.hTotal * 1e9),
  P040: () => slope('dic', (s) => s.co2MolPerKg * 1e6),
  P041: () => slope('dic', (s) => s.hco3MolPerKg * 1e6),
  P042: () => slope('dic', (s) => s.co3MolPerKg * 1e6),
  P043: () => slope('dic', (s) => s.omegaAragonite),
};
