import { oxygenKLaPerH } from '../../shared/seawater/oxygen';
import { indexOf } from '../../shared/species/block';
import { poolsWith } from '../../shared/species/species';
import type { Books, Term } from './books';
import type { Flows } from './flows';
import type { Reactions } from './reactions';
import { relax } from './relax';
import type { Step } from './step';
import type { TankView } from './tankView';

const [AIR, OWED] = [poolsWith('airOxygen')[0]!, poolsWith('oxygenOwed')[0]!];
/** So little is left where all is used, that rounding takes it not below nothing, mol/kg. */
const TRACE = 1e-12;
/** A day that keeps more than this of its start has hardly met the air. */
const MOST_KEPT = 0.9;

/**
 * Oxygen in the tank. It steers nothing, neither a rate nor a step, so it follows each accepted
 * step: what life gives and takes as a parabola, and the air pulling at what is
 * there, solved exactly, however stiff. Where life asks for more than there is, its carbon goes on
 * all the same and the oxygen that was not there becomes a debt: every line was passed long before.
 */
export class Oxygen {
  /** What is left of the start is e^−decay of it: the sum of transfer and outflow. */
  decay = 0;
  endMol = 0.5;
  /** What leaves with a kilogram of the tank's water, in the mean of the step. */
  meanMolPerKg = 0.5;
  private fromAirMol = 0.5;
  private owedMol = 0.5;
  private leastMol = 0.5;
  /** The step just taken, for what lies between: its start, length, decay and parabola. */
  private fromMol = 0.5;
  private hours = 0.5;
  private stepDecay = 0.5;
  private even = 0.5;
  private rising = 0.5;
  private bending = 0.5;
  private readonly left = new Float64Array(4);
  private readonly debt: readonly Term[];
  private readonly air: number;

  constructor(
    private readonly reactions: Reactions,
    private readonly flows: Flows,
    private readonly books: Books,
  ) {
    this.air = books.poolIndex(AIR);
    this.debt = [indexOf.O2, books.poolIndex(OWED)].map((index) => ({ index, moles: 1 }));
    this.left.fill(0.5);
  }

  /** Works out the step that was accepted: its end and its mean, before anything is booked. */
  advance(
    { hours, extents, begins, ends }: Step,
    fromMol: number,
    { kLaPerH: co2 }: TankView,
  ): void {
    const { flows } = this;
    const kLaPerH = oxygenKLaPerH(co2, (begins.tempC + ends.tempC) / 2);
    const kg = (begins.kg + ends.kg) / 2;
    const decayPerH = kLaPerH + flows.outKgPerH / kg;
    // Water under the same air: within a step its saturation moves evenly.
    const [air0, air1] = [begins.airMol, ends.airMol];
    const airMolPerH = (kLaPerH * (air0 + air1)) / 2;
    const airRise = kLaPerH * (air1 - air0);
    const [l0, l2] = [begins.lifeMolPerH, ends.lifeMolPerH];
    const l1 = (l0 + l2) / 2 + (hours / 8) * (begins.lifeMolPerH2 - ends.lifeMolPerH2);
    const lifeMol = this.reactions.oxygenOf(extents);
    const inflow = flows.intoTank[indexOf.O2]!;
    // What life does in all is booked already: the parabola gives it its shape.
    const bend = 2 * (l0 + l2) - 4 * l1;
    const rise = l2 - l0 - bend;
    const mean = hours > 0 ? lifeMol / hours : 0;
    this.fromMol = fromMol;
    this.hours = hours;
    this.stepDecay = decayPerH * hours;
    this.even = mean - rise / 2 - bend / 3 + inflow + airMolPerH - airRise / 2;
    this.rising = rise + airRise;
    this.bending = bend;
    this.decay += this.stepDecay;
    this.leastMol = TRACE * kg;
    const solved = this.solved(1);
    this.endMol = Math.max(this.leastMol, solved);
    const broughtMol = lifeMol + hours * (inflow + airMolPerH);
    const lostMol = fromMol + broughtMol - solved;
    const solvedMean = this.stepDecay > 0 ? lostMol / this.stepDecay : fromMol;
    const meanMol = Math.max(0, solvedMean);
    this.meanMolPerKg = meanMol / kg;
    this.fromAirMol = hours * (airMolPerH - kLaPerH * meanMol);
    const isShort = solved < this.endMol || solvedMean < 0;
    this.owedMol = isShort ? this.endMol - fromMol - broughtMol + this.stepDecay * meanMol : 0;
  }

  /** Books what came from the air, and what was asked for in vain; it moves no alkalinity. */
  book(row: number): void {
    this.books.shift(row, this.air, indexOf.O2, this.fromAirMol);
    if (this.owedMol > 0) this.books.react(row, this.debt, this.owedMol);
  }

  /**
   * Oxygen that a day would have to begin with to end with the same, mol, once it was run from a
   * start: what it ends with is straight in what it begins with. Where the air hardly reaches the
   * water there is no such day, and the start is given back; where all was used, the day's end.
   */
  cyclicMol(startMol: number): number {
    const kept = Math.exp(-this.decay);
    if (kept > MOST_KEPT) return startMol;
    const cyclic = (this.endMol - kept * startMol) / (1 - kept);
    return this.books.pool(OWED) > 0 ? this.endMol : Math.max(0, cyclic);
  }

  /** Oxygen part of the way through the step just taken, mol. */
  at(part: number): number {
    return Math.max(this.leastMol, this.solved(part));
  }

  private solved(part: number): number {
    const { left } = this;
    relax(this.stepDecay, part, left);
    const forced = this.even * left[1]! + this.rising * left[2]! + this.bending * left[3]!;
    return this.fromMol * left[0]! + this.hours * forced;
  }
}
