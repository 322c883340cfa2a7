import type { Scenario } from '../../../shared/scenario/schema';
import { molarMassGPerMol } from '../../../shared/seawater/atomicMasses';
import { seawaterDensityKgPerM3 } from '../../../shared/seawater/density';
import { phTotalFromPhNbs } from '../../../shared/seawater/phNbs';
import { CarbonateSolver } from '../../../shared/seawater/solver';
import { readColumn, type Trace } from '../../../shared/trace/trace';

const CO2_G_PER_MOL = molarMassGPerMol({ C: 1, O: 2 });

/**
 * Carbon dioxide, g, that brings a tank from what it is at an hour of a trial down to the keeper's
 * pH limit, with no help from the air; 0 when it is there already.
 */
export function co2DemandG({ limits }: Scenario, trace: Trace, timeH: number): number {
  const row = Math.min(trace.rows - 1, Math.ceil(timeH));
  const at = (id: Parameters<typeof readColumn>[1]) => readColumn(trace, id)[row]!;
  const [tempC, salinityPractical] = [at('temperature_c'), at('salinity_ppt')];
  const solver = new CarbonateSolver();
  solver.setConditions(tempC, salinityPractical);
  solver.setTotalsFromSalinity(salinityPractical);
  const wanted = solver.dicFromPh(
    at('alkalinity_umol_kg') * 1e-6,
    phTotalFromPhNbs(limits.phHighNbs, solver.k),
  );
  const kg = (at('volume_l') * seawaterDensityKgPerM3({ tempC, salinityPractical })) / 1000;
  return Math.max(0, wanted - at('dic_umol_kg') * 1e-6) * kg * CO2_G_PER_MOL;
}
