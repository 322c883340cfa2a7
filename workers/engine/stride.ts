import { INSTANT_H } from '../../shared/scenario/clock';
import { AIM_BEYOND_H, type Sensors } from './sensors';
import { TOO_LONG, type Step } from './step';

const LONGEST_H = 1;
const CAREFUL_H = 0.25;
const SMALLEST_H = 1e-6;
/** What is this far off is no step at all: it may be as short as where all falls out in a blink. */
const NO_STEP_UMOL_PER_KG = 1000;
const SUDDEN_H = 1e-9;
/** A step that ends this little too late is trimmed along its last slope; the error is its square. */
const TRIM_H = 1 / 3600;

/** How long the next step may be: as long as its error allows, and no farther than a sensor's mark. */
export class Stride {
  /** Hours that are tried next. */
  tryH = CAREFUL_H;

  constructor(
    private readonly step: Step,
    private readonly sensors: Sensors,
    private readonly toleranceUmolPerKg: number,
  ) {}

  /** After something sudden. */
  feelTheWay(): void {
    this.tryH = Math.min(this.tryH, CAREFUL_H);
  }

  /** Tries a step of at most so many hours, and returns those it came to. */
  take(span: number, most: number): number {
    const target = Math.min(span, this.sensors.hoursUntilReached(), most);
    let hours = Math.min(target, this.tryH);
    // Two even steps instead of one long and one sliver.
    if (hours < target && hours > target * 0.6) hours = target / 2;
    return this.shortenToSensor(this.attemptWithin(hours));
  }

  /** Tries shorter steps until the error is inside the tolerance. */
  private attemptWithin(first: number): number {
    let hours = first;
    for (;;) {
      const offUmolPerKg = this.step.attempt(hours);
      const error = offUmolPerKg / this.toleranceUmolPerKg;
      if (!(error < Infinity)) this.step.refuse();
      const factor = error === 0 ? 5 : Math.min(5, Math.max(0.2, 0.9 * Math.cbrt(1 / error)));
      if (error <= 1) {
        // A step cut short by a switch says little about the next: only let it grow the trial.
        this.tryH = Math.min(LONGEST_H, Math.max(hours * factor, factor >= 1 ? this.tryH : 0));
        return hours;
      }
      const smallestH = offUmolPerKg > NO_STEP_UMOL_PER_KG ? SUDDEN_H : SMALLEST_H;
      if (hours <= smallestH) {
        if (offUmolPerKg === TOO_LONG) this.step.refuse();
        return hours;
      }
      hours = Math.max(smallestH, hours * factor);
      this.tryH = hours;
    }
  }

  /** If a sensor was passed on the way, stops at it: by trimming a moment, else by a new try. */
  private shortenToSensor(first: number): number {
    let hours = first;
    for (let tries = 0; tries < 20; tries++) {
      const lateH = (1 - this.sensors.partPassed()) * hours;
      if (lateH < TRIM_H) {
        // The mark would stay a hair ahead of a step without length.
        const trimmedH = Math.max(0, Math.min(lateH, hours - INSTANT_H));
        this.step.trim(trimmedH);
        return hours - trimmedH;
      }
      hours = Math.max(INSTANT_H, hours - lateH + AIM_BEYOND_H);
      this.step.attempt(hours);
    }
    return hours;
  }
}
