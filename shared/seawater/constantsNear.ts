import { SeawaterConstants } from './constants';

/** Distance between the salinities at which the constants are worked out exactly. */
const SPACING = 0.1;

/**
 * The constants of water whose salinity wanders while its temperature stays: a parabola through
 * three exact points on a fixed grid, within 3e-7 of the exact K from salinity 5 up, at a third of
 * the cost. A new temperature is worked out exactly. (kspCalcite is not carried along.)
 */
export class ConstantsNearSalinity {
  /** Exact constants at places of the grid, at the last temperature. */
  private readonly exact = new Map<number, SeawaterConstants>();
  private lastTempC = NaN;

  fill(k: SeawaterConstants, tempC: number, salinityPractical: number): void {
    if (tempC !== this.lastTempC || salinityPractical < 5) {
      this.lastTempC = tempC;
      this.exact.clear();
      k.set(tempC, salinityPractical);
      return;
    }
    const place = Math.round(salinityPractical / SPACING);
    const middle = place * SPACING;
    const low = this.exactAt(place - 1, middle - SPACING);
    const mid = this.exactAt(place, middle);
    const high = this.exactAt(place + 1, middle + SPACING);
    const x = (salinityPractical - middle) / SPACING;
    const a = (x * (x - 1)) / 2;
    const b = 1 - x * x;
    const c = (x * (x + 1)) / 2;
    k.k0 = a * low.k0 + b * mid.k0 + c * high.k0;
    k.k1 = a * low.k1 + b * mid.k1 + c * high.k1;
    k.k2 = a * low.k2 + b * mid.k2 + c * high.k2;
    k.kb = a * low.kb + b * mid.kb + c * high.kb;
    k.kw = a * low.kw + b * mid.kw + c * high.kw;
    k.kf = a * low.kf + b * mid.kf + c * high.kf;
    k.ks = a * low.ks + b * mid.ks + c * high.ks;
    k.kp1 = a * low.kp1 + b * mid.kp1 + c * high.kp1;
    k.kp2 = a * low.kp2 + b * mid.kp2 + c * high.kp2;
    k.kp3 = a * low.kp3 + b * mid.kp3 + c * high.kp3;
    k.kNh4 = a * low.kNh4 + b * mid.kNh4 + c * high.kNh4;
    k.kspAragonite = a * low.kspAragonite + b * mid.kspAragonite + c * high.kspAragonite;
    k.hTotalPerHFree = a * low.hTotalPerHFree + b * mid.hTotalPerHFree + c * high.hTotalPerHFree;
    k.hSwsPerHTotal = a * low.hSwsPerHTotal + b * mid.hSwsPerHTotal + c * high.hSwsPerHTotal;
    k.fH = a * low.fH + b * mid.fH + c * high.fH;
    k.phTotalOverPhNbs =
      a * low.phTotalOverPhNbs + b * mid.phTotalOverPhNbs + c * high.phTotalOverPhNbs;
    k.fco2PerPco2 = mid.fco2PerPco2;
    k.tempC = tempC;
    k.salinityPractical = salinityPractical;
  }
  private exactAt(place: number, salinityPractical: number): SeawaterConstants {
    const known = this.exact.get(place);
    if (known) return known;
    const k = new SeawaterConstants();
    k.set(this.lastTempC, salinityPractical);
    this.exact.set(place, k);
    return k;
  }
}
