import { SeawaterConstants } from './constants';
import { setNoncarbonate } from './noncarbonate';
import {
  totalBorateMolPerKg,
  totalCalciumMolPerKg,
  totalFluorideMolPerKg,
  totalSulfateMolPerKg,
} from './totals';

/**
 * Alkalinity, with DIC or dissolved CO2 or pH, to everything else. One object is kept and refilled:
 * nothing is allocated, and each search starts from the pH before. Amounts are mol/kg of seawater.
 */
export class CarbonateSolver {
  readonly k = new SeawaterConstants();
  // Fields that may hold whole numbers start as fractions, so that V8 keeps them as doubles.
  borate = 0.5;
  sulfate = 0.5;
  fluoride = 0.5;
  phosphate = 0.5;
  ammonia = 0.5;
  calcium = 0.5;
  phTotal = 8.1;
  hTotal = 10 ** -8.1;
  co2MolPerKg = 0.5;
  hco3MolPerKg = 0.5;
  co3MolPerKg = 0.5;
  pco2Uatm = 0.5;
  omegaAragonite = 0.5;
  noncarbonateMolPerKg = 0.5;
  noncarbonateSlope = 0.5;

  constructor() {
    this.setConditions(25, 35);
    this.setTotalsFromSalinity(35);
    this.phosphate = 0;
    this.ammonia = 0;
  }

  setConditions(tempC: number, salinityPractical: number): void {
    this.k.set(tempC, salinityPractical);
  }

  setTotalsFromSalinity(salinityPractical: number): void {
    this.borate = totalBorateMolPerKg(salinityPractical);
    this.sulfate = totalSulfateMolPerKg(salinityPractical);
    this.fluoride = totalFluorideMolPerKg(salinityPractical);
    this.calcium = totalCalciumMolPerKg(salinityPractical);
  }

  solve(alkalinityMolPerKg: number, dicMolPerKg: number): void {
    const { k1, k2 } = this.k;
    const h = this.findH(alkalinityMolPerKg, dicMolPerKg, false);
    this.write(h, (dicMolPerKg * h * h) / (h * h + k1 * (h + k2)));
  }

  /** Solves the water in equilibrium with this pCO2, and returns its DIC in mol/kg. */
  dicFromPco2(alkalinityMolPerKg: number, pco2Uatm: number): number {
    const co2 = pco2Uatm * 1e-6 * this.k.fco2PerPco2 * this.k.k0;
    this.write(this.findH(alkalinityMolPerKg, co2, true), co2);
    return this.co2MolPerKg + this.hco3MolPerKg + this.co3MolPerKg;
  }

  /** Sets the water at a known pH, and returns its DIC in mol/kg; negative if there is none. */
  dicFromPh(alkalinityMolPerKg: number, phTotal: number): number {
    const { k1, k2 } = this.k;
    const h = Math.exp(-phTotal * Math.LN10);
    setNoncarbonate(this, h);
    this.write(h, ((alkalinityMolPerKg - this.noncarbonateMolPerKg) * h * h) / (k1 * (h + 2 * k2)));
    return this.co2MolPerKg + this.hco3MolPerKg + this.co3MolPerKg;
  }

  /** Newton on ln h inside a bracket that only shrinks: alkalinity falls with h all the way. */
  private findH(alkalinity: number, amount: number, amountIsCo2: boolean): number {
    const k1 = this.k.k1;
    const k1k2 = k1 * this.k.k2;
    let low = 1e-16;
    let high = 10;
    let h = this.hTotal;
    for (let iteration = 0; iteration < 100 && amount >= 0; iteration++) {
      setNoncarbonate(this, h);
      const hh = h * h;
      const x = k1 * h;
      const scale = 1 / (amountIsCo2 ? hh : hh + x + k1k2);
      const slope = amountIsCo2
        ? -amount * (x + 4 * k1k2) * scale
        : -amount * (x * (hh + k1k2) + 4 * k1k2 * hh) * scale * scale;
      const excess = amount * (x + 2 * k1k2) * scale + this.noncarbonateMolPerKg - alkalinity;
      if (excess > 0) low = h;
      else high = h;
      const step = -excess / (slope + this.noncarbonateSlope);
      const size = Math.abs(step);
      if (size < 4e-7) return h * (1 + step); // what is left of the error is of order step squared
      // (2 + step) / (2 - step) stands in for exp(step).
      const next = size < 1.5 ? (h * (2 + step)) / (2 - step) : step > 0 ? h * 5 : h * 0.2;
      h = next > low && next < high && iteration < 40 ? next : Math.sqrt(low * high);
    }
    throw new RangeError(
      `alkalinity ${alkalinity} with ${amountIsCo2 ? 'dissolved CO2' : 'DIC'} ${amount} mol/kg has no pH; ` +
        'expected finite amounts, the second not negative',
    );
  }

  private write(h: number, co2: number): void {
    const k = this.k;
    const hco3 = (co2 * k.k1) / h;
    const co3 = (hco3 * k.k2) / h;
    this.hTotal = h;
    this.phTotal = -Math.LOG10E * Math.log(h);
    this.co2MolPerKg = co2;
    this.hco3MolPerKg = hco3;
    this.co3MolPerKg = co3;
    this.pco2Uatm = (co2 * 1e6) / (k.k0 * k.fco2PerPco2);
    this.omegaAragonite = (this.calcium * co3) / k.kspAragonite;
  }
}
