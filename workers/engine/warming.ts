import { WARMER_C } from '../../shared/processes/motion';
import { CarbonateSolver } from '../../shared/seawater/solver';
import { volumeL, type TankView } from './tankView';

/** What a degree does to a tank whose amounts stay, by a second look a little warmer. */
export class Warming {
  lnHTotal = 0.5;
  pco2Uatm = 0.5;
  omegaAragonite = 0.5;
  k0 = 0.5;
  volumeL = 0.5;
  readonly warmer = new CarbonateSolver();

  look(view: TankView): void {
    const { solver, tempC, salinityPractical, alkalinityMolPerKg, dicMolPerKg } = view;
    const { warmer } = this;
    const warmVolumeL = volumeL(view.saltKg, view.solutionKg, tempC + WARMER_C);
    warmer.borate = solver.borate;
    warmer.sulfate = solver.sulfate;
    warmer.fluoride = solver.fluoride;
    warmer.phosphate = solver.phosphate;
    warmer.ammonia = solver.ammonia;
    warmer.calcium = solver.calcium;
    warmer.hTotal = solver.hTotal;
    warmer.setConditions(tempC + WARMER_C, salinityPractical);
    warmer.solve(alkalinityMolPerKg, dicMolPerKg);
    this.lnHTotal = Math.log(warmer.hTotal / solver.hTotal) / WARMER_C;
    this.pco2Uatm = (warmer.pco2Uatm - solver.pco2Uatm) / WARMER_C;
    this.omegaAragonite = (warmer.omegaAragonite - solver.omegaAragonite) / WARMER_C;
    this.k0 = (warmer.k.k0 - solver.k.k0) / WARMER_C;
    this.volumeL = (warmVolumeL - view.volumeL) / WARMER_C;
  }
}
