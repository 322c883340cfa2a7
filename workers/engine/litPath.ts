import { FLAT_ABOVE_OMEGA, usedOmega } from '../../shared/processes/growthLaw';

/** Light's weight and saturation at a moment. */
export interface Lit {
  readonly weight: number;
  readonly omega: number;
}

/**
 * The saturation of a day as growth meets it: what it was, and for how many lit hours. Simpson's
 * rule over the ends and the middle of each step; where saturation passes the bend of the growth
 * law, straight lines that are cut there.
 */
export class LitPath {
  private readonly litHours: number[] = [];
  private readonly omegas: number[] = [];

  /** Adds a stretch of hours. */
  add(hours: number, from: Lit, middle: Lit, to: Lit): void {
    const above = (lit: Lit) => lit.omega > FLAT_ABOVE_OMEGA;
    if (above(from) !== above(middle) || above(middle) !== above(to)) {
      this.addStraight(hours / 2, from, middle);
      this.addStraight(hours / 2, middle, to);
      return;
    }
    this.note(hours / 6, from);
    this.note((4 * hours) / 6, middle);
    this.note(hours / 6, to);
  }

  /** Mean of the saturation that growth answers to, weighed by the light. */
  get meanOmega(): number {
    let [sum, all] = [0, 0];
    for (let i = 0; i < this.omegas.length; i++) {
      sum += this.litHours[i]! * usedOmega(this.omegas[i]!);
      all += this.litHours[i]!;
    }
    // Rounding alone would carry a tank that stands above the bend past what can be typed.
    return usedOmega(sum / all);
  }

  /** The lowest saturation of the day. */
  get lowestOmega(): number {
    return Math.min(...this.omegas);
  }

  private addStraight(hours: number, from: Lit, to: Lit): void {
    const bend = (FLAT_ABOVE_OMEGA - from.omega) / (to.omega - from.omega);
    if (bend > 0 && bend < 1) {
      const weight = from.weight + bend * (to.weight - from.weight);
      const cut = { weight, omega: FLAT_ABOVE_OMEGA };
      this.addStraight(hours * bend, from, cut);
      this.addStraight(hours * (1 - bend), cut, to);
      return;
    }
    const middle = { weight: (from.weight + to.weight) / 2, omega: (from.omega + to.omega) / 2 };
    this.note(hours / 6, from);
    this.note((4 * hours) / 6, middle);
    this.note(hours / 6, to);
  }

  private note(hours: number, { weight, omega }: Lit): void {
    this.litHours.push(hours * weight);
    this.omegas.push(omega);
  }
}
