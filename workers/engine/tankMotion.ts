import type { Motion } from '../../shared/processes/motion';
import { SeawaterConstants } from '../../shared/seawater/constants';
import { setNoncarbonate, type NoncarbonateWater } from '../../shared/seawater/noncarbonate';
import {
  alkalinityEq,
  BLOCK_SIZE,
  indexOf,
  saltKg,
  WATER,
  type Block,
} from '../../shared/species/block';
import type { TankView } from './tankView';
import { Warming } from './warming';

/** How a tank moves at a look: what follows from how its amounts move, by the chain rule. */
export class TankMotion implements Motion {
  tempC = 0.5;
  solutionKg = 0.5;
  saltKg = 0.5;
  volumeL = 0.5;
  alkalinityMolPerKg = 0.5;
  dicMolPerKg = 0.5;
  lnHTotal = 0.5;
  pco2Uatm = 0.5;
  omegaAragonite = 0.5;
  k0 = 0.5;
  pco2AirUatm = 0.5;
  precipitateMol = 0.5;
  light = 0.5;
  amounts: Block = new Float64Array(BLOCK_SIZE);
  private readonly warming = new Warming();
  readonly warmer = this.warming.warmer.k;
  /** Totals of what is not carbonate, by the hour. */
  private readonly rest: NoncarbonateWater = {
    k: new SeawaterConstants(),
    ...{ borate: 0.5, sulfate: 0.5, fluoride: 0, phosphate: 0.5, ammonia: 0.5 },
    ...{ noncarbonateMolPerKg: 0.5, noncarbonateSlope: 0.5 },
  };

  /** `perH` is what each amount of the tank gains in an hour. */
  follow(view: TankView, perH: Block): void {
    const kg = view.solutionKg;
    const saltKgPerH = saltKg(perH);
    const kgPerH = saltKgPerH + perH[WATER]!;
    this.amounts = perH;
    this.saltKg = saltKgPerH;
    this.solutionKg = kgPerH;
    this.light = view.lightSlopePerH;
    this.alkalinityMolPerKg = (alkalinityEq(perH) - view.alkalinityMolPerKg * kgPerH) / kg;
    this.dicMolPerKg = (perH[indexOf.DIC]! - view.dicMolPerKg * kgPerH) / kg;
    // Salt's part in density counts as still.
    this.volumeL = (view.volumeL * kgPerH) / kg;
    this.followCarbonate(view);
    if (this.tempC === 0) this.k0 = 0;
    else this.followWarmth(view);
  }

  private followWarmth(view: TankView): void {
    const { warming, tempC } = this;
    warming.look(view);
    this.lnHTotal += tempC * warming.lnHTotal;
    this.pco2Uatm += tempC * warming.pco2Uatm;
    this.omegaAragonite += tempC * warming.omegaAragonite;
    this.k0 = tempC * warming.k0;
    this.volumeL += tempC * warming.volumeL;
  }

  /** What borate, phosphate and their like bring to alkalinity an hour, at the pH that there is. */
  private restPerH({ solver, hTotal, solutionKg: kg }: TankView): number {
    const { rest, amounts, solutionKg } = this;
    const { k } = solver;
    rest.k = k;
    rest.borate = (amounts[indexOf.B]! - solver.borate * solutionKg) / kg;
    rest.sulfate = (amounts[indexOf.SO4]! - solver.sulfate * solutionKg) / kg;
    rest.phosphate = (amounts[indexOf.PO4]! - solver.phosphate * solutionKg) / kg;
    rest.ammonia = (amounts[indexOf.TAN]! - solver.ammonia * solutionKg) / kg;
    setNoncarbonate(rest, hTotal);
    return rest.noncarbonateMolPerKg - (k.kw / hTotal - hTotal / k.hTotalPerHFree);
  }

  /** Alkalinity = DIC · share(h) + the rest(h): solved for how h moves. */
  private followCarbonate(view: TankView): void {
    const { solver, dicMolPerKg: dic, solutionKg, amounts } = view;
    const restPerH = this.restPerH(view);
    const { k1, k2 } = solver.k;
    const h = view.hTotal;
    const hh = h * h;
    const x = k1 * h;
    const k1k2 = k1 * k2;
    const scale = 1 / (hh + x + k1k2);
    const slope =
      dic * (x * (hh + k1k2) + 4 * k1k2 * hh) * scale * scale - solver.noncarbonateSlope;
    const thinner = this.solutionKg / solutionKg;
    const carbonatePerH = (x + 2 * k1k2) * scale * this.dicMolPerKg;
    const lnH = (carbonatePerH + restPerH - this.alkalinityMolPerKg) / slope;
    const perDic = dic > 0 ? this.dicMolPerKg / dic : 0;
    const ofCo3 = perDic - lnH * (2 * hh + x) * scale;
    const calcium = amounts[indexOf.Ca]!;
    const perCalcium = calcium > 0 ? this.amounts[indexOf.Ca]! / calcium - thinner : 0;
    this.lnHTotal = lnH;
    this.pco2Uatm = view.pco2Uatm * (ofCo3 + 2 * lnH);
    this.omegaAragonite = view.omegaAragonite * (ofCo3 + perCalcium);
  }
}
