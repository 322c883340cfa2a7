import { INSTANT_H } from '../../shared/scenario/clock';
import type { Pipe } from '../../shared/devices/device';
import {
  BLOCK_SIZE,
  copyBlock,
  emptyBlock,
  solutionKg,
  WATER,
  type Block,
} from '../../shared/species/block';
import type { Books } from './books';
import type { Plan } from './compile';

interface PipeRun {
  readonly pipe: Pipe;
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly contents: Block;
}

/**
 * The pipes of a tank and what they carry while nobody turns a valve. What flows in has a
 * constant composition for that long; what leaves the tank has the tank's, which the step follows.
 */
export class Flows {
  /** Added to the tank each hour: mol of every species, kg of water. Vapour counts as negative. */
  readonly intoTank = new Float64Array(BLOCK_SIZE);
  /** Solution drawn from the tank, kg/h. */
  outKgPerH = 0;
  private readonly contents = emptyBlock();
  private readonly runs: readonly PipeRun[];

  constructor(
    plan: Plan,
    private readonly books: Books,
  ) {
    this.runs = plan.devices
      .flatMap((device) => device.pipes)
      .map((pipe) => ({
        pipe,
        row: plan.ledger.findIndex(({ id }) => id === pipe.id),
        from: books.offsetOf(pipe.from),
        to: books.offsetOf(pipe.to),
        contents: books.vessel(pipe.from),
      }));
  }

  /** Reads the valves again, after a device has acted. */
  update(): void {
    this.intoTank.fill(0);
    this.outKgPerH = 0;
    for (const { pipe, from, to, contents } of this.runs) {
      if (pipe.kgPerH === 0) continue;
      if (pipe.vapour) this.intoTank[WATER]! -= pipe.kgPerH;
      else if (from === 0) this.outKgPerH += pipe.kgPerH;
      else if (to === 0) this.addInflow(pipe.perKg ?? contents, pipe.kgPerH);
    }
  }

  private addInflow(contents: Block, kgPerH: number): void {
    const perKg = kgPerH / solutionKg(contents);
    for (let i = 0; i < BLOCK_SIZE; i++) this.intoTank[i]! += contents[i]! * perKg;
  }

  /** Hours until the first vessel that feeds an open pipe is empty. */
  hoursUntilDry(): number {
    let hours = Infinity;
    for (const { pipe, from, contents } of this.runs) {
      if (pipe.kgPerH === 0 || from === 0 || pipe.from === 'outside') continue;
      hours = Math.min(hours, solutionKg(contents) / pipe.kgPerH);
    }
    return hours;
  }

  /** Books what all pipes carried in so many hours; `tankMean` is a mean kilogram of tank water. */
  book(hours: number, tankMeanPerKg: Float64Array): void {
    for (const run of this.runs) {
      const { pipe, row, from, to } = run;
      const kg = pipe.kgPerH * hours;
      if (kg === 0) continue;
      if (pipe.vapour) this.books.shift(row, from + WATER, to + WATER, kg);
      else if (from === 0) this.books.transfer(row, from, to, tankMeanPerKg, kg);
      else if (pipe.perKg) this.books.transfer(row, from, to, pipe.perKg, kg);
      else this.bookFromVessel(run, kg);
    }
  }

  /** What would run out within an instant has run out: rounding of the clock leaves no drop behind. */
  private bookFromVessel({ pipe, row, from, to, contents }: PipeRun, kg: number): void {
    const heldKg = solutionKg(contents);
    const share = heldKg - kg <= pipe.kgPerH * INSTANT_H ? 1 : kg / heldKg;
    copyBlock(this.contents, contents);
    this.books.transfer(row, from, to, this.contents, share);
  }
}
