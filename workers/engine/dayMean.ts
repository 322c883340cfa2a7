import { FLAT_ABOVE_OMEGA, usedOmega } from '../../shared/processes/calcification';

/**
 * Mean of the saturation that growth answers to, weighed by the light. Between looks light and
 * saturation are straight lines; where saturation passes the bend of the growth law, the line is
 * cut there.
 */
export class DayMean {
  private sum = 0;
  private weight = 0;

  /** Adds a stretch of hours with the light's weight and Ω at both of its ends. */
  add(hours: number, litFrom: number, litTo: number, from: number, to: number): void {
    const bend = (FLAT_ABOVE_OMEGA - from) / (to - from);
    if (bend > 0 && bend < 1) {
      const lit = litFrom + bend * (litTo - litFrom);
      this.add(hours * bend, litFrom, lit, from, FLAT_ABOVE_OMEGA);
      this.add(hours * (1 - bend), lit, litTo, FLAT_ABOVE_OMEGA, to);
      return;
    }
    const [a, b] = [usedOmega(from), usedOmega(to)];
    this.sum += (hours * (litFrom * (2 * a + b) + litTo * (a + 2 * b))) / 6;
    this.weight += (hours * (litFrom + litTo)) / 2;
  }

  get value(): number {
    return this.sum / this.weight;
  }
}
