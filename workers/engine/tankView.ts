import type { View } from '../../shared/processes/view';
import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import type { SeawaterConstants } from '../../shared/seawater/constants';
import { ConstantsNearSalinity } from '../../shared/seawater/constantsNear';
import { densityKgPerM3 } from '../../shared/seawater/density';
import { oxygenSaturationUmolPerKg } from '../../shared/seawater/oxygen';
import { phNbsFromPhTotal } from '../../shared/seawater/phNbs';
import { CarbonateSolver } from '../../shared/seawater/solver';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import {
  alkalinityWeights,
  BLOCK_SIZE,
  indexOf,
  saltKgWeights,
  WATER,
  type Block,
} from '../../shared/species/block';
import { totalFluorideMolPerKg } from '../../shared/seawater/totals';
import { SALT_G_PER_KG_PER_PSU } from '../../shared/water/referenceSeawater';

const O2_G_PER_MOL = molarMassGPerMol({ O: 2 });
const PSU_PER_MASS_FRACTION = 1000 / SALT_G_PER_KG_PER_PSU;

/** Volume of a solution at a temperature, L. */
export const volumeL = (saltKg: number, solutionKg: number, tempC: number): number =>
  (1000 * solutionKg) / densityKgPerM3(tempC, (saltKg / solutionKg) * PSU_PER_MASS_FRACTION);

/** The tank at one instant: everything that follows from its amounts, worked out once a look. */
export class TankView implements View {
  timeH = 0.5;
  tempC = 25.5;
  salinityPractical = 35.5;
  volumeL = 0.5;
  saltKg = 0.5;
  solutionKg = 0.5;
  alkalinityMolPerKg = 0.5;
  dicMolPerKg = 0.5;
  pco2AirUatm = 0.5;
  light = 0.5;
  kLaPerH = 0.5;
  powered = true;
  /** Whether light, power or air are others than when every process was last asked. */
  isSwitched = true;
  private lightLevel = 0.5;
  lightSlopePerH = 0.5;
  private lightFromH = 0.5;
  amounts: Block = new Float64Array(BLOCK_SIZE);
  readonly solver = new CarbonateSolver();
  /** Written by the step, which knows what its earlier looks have made fall out. */
  precipitateMol = 0.5;
  private readonly nearby = new ConstantsNearSalinity();

  constructor() {
    this.precipitateMol = 0;
  }

  /** Light from now on: a level, and how it changes by itself until it is set again. */
  setLight(level: number, slopePerH: number): void {
    if (slopePerH === this.lightSlopePerH && level === this.light) return;
    this.isSwitched = true;
    this.lightLevel = level;
    this.lightSlopePerH = slopePerH;
    this.lightFromH = this.timeH;
    this.light = level;
  }

  setPower(on: boolean): void {
    this.isSwitched ||= on !== this.powered;
    this.powered = on;
  }

  /** Gas exchange from now on, 1/h. */
  setAeration(kLaPerH: number): void {
    this.isSwitched ||= kLaPerH !== this.kLaPerH;
    this.kLaPerH = kLaPerH;
  }

  /** Light at a moment since it was last set. */
  lightAt(timeH: number): number {
    return this.lightLevel + this.lightSlopePerH * (timeH - this.lightFromH);
  }

  /** Reads a tank's amounts at a time; the solver starts from the pH it found last. */
  read(amounts: Block, timeH: number, tempC: number, pco2AirUatm: number): void {
    let alkalinityEq = 0;
    let saltKg = 0;
    for (let i = 0; i < WATER; i++) {
      alkalinityEq += alkalinityWeights[i]! * amounts[i]!;
      saltKg += saltKgWeights[i]! * amounts[i]!;
    }
    const kg = saltKg + amounts[WATER]!;
    this.amounts = amounts;
    this.timeH = timeH;
    this.light = this.lightAt(timeH);
    this.tempC = tempC;
    this.pco2AirUatm = pco2AirUatm;
    this.saltKg = saltKg;
    this.solutionKg = kg;
    this.salinityPractical = (saltKg / kg) * PSU_PER_MASS_FRACTION;
    this.volumeL = volumeL(saltKg, kg, tempC);
    this.alkalinityMolPerKg = alkalinityEq / kg;
    this.dicMolPerKg = amounts[indexOf.DIC]! / kg;
    const solver = this.solver;
    this.nearby.fill(solver.k, tempC, this.salinityPractical);
    solver.borate = amounts[indexOf.B]! / kg;
    solver.sulfate = amounts[indexOf.SO4]! / kg;
    solver.fluoride = totalFluorideMolPerKg(this.salinityPractical);
    solver.phosphate = amounts[indexOf.PO4]! / kg;
    solver.ammonia = amounts[indexOf.TAN]! / kg;
    solver.calcium = amounts[indexOf.Ca]! / kg;
    solver.solve(this.alkalinityMolPerKg, this.dicMolPerKg);
  }

  get phTotal(): number {
    return this.solver.phTotal;
  }
  get hTotal(): number {
    return this.solver.hTotal;
  }
  get constants(): SeawaterConstants {
    return this.solver.k;
  }
  get phNbs(): number {
    return phNbsFromPhTotal(this.solver.phTotal, this.solver.k);
  }
  get pco2Uatm(): number {
    return this.solver.pco2Uatm;
  }
  get omegaAragonite(): number {
    return this.solver.omegaAragonite;
  }
  get k0(): number {
    return this.solver.k.k0;
  }
  get alkalinityDkh(): number {
    return (this.alkalinityMolPerKg * this.solutionKg * 1000) / this.volumeL / meqPerLPerDkh;
  }
  /** Share of total ammonia that is NH3, from the constant the solver holds (Clegg & Whitfield 1995). */
  get unionisedAmmoniaFraction(): number {
    const { kNh4 } = this.solver.k;
    return kNh4 / (kNh4 + this.solver.hTotal);
  }
  get oxygenMgPerL(): number {
    return this.mgPerL(indexOf.O2, O2_G_PER_MOL);
  }
  /** Oxygen against what the air holds it at, %. */
  get oxygenSaturationPercent(): number {
    const { tempC, salinityPractical } = this;
    const saturated = oxygenSaturationUmolPerKg(tempC, salinityPractical) * 1e-6;
    return (100 * this.amounts[indexOf.O2]!) / this.solutionKg / saturated;
  }
  /** mg of the atom or molecule of this mass in a litre at the tank's temperature. */
  mgPerL(species: number, molarMassG: number): number {
    return (this.amounts[species]! * molarMassG * 1000) / this.volumeL;
  }
}
