import {
  alkalinityWeights,
  copyBlock,
  BLOCK_SIZE,
  indexOf,
  solutionKg,
  WATER,
} from '../../shared/species/block';
import { poolsWith } from '../../shared/species/species';
import type { Books } from './books';
import { movingPools, type Channel, type Moving } from './compile';
import type { Flows } from './flows';
import type { Oxygen } from './oxygen';
import type { TankView } from './tankView';
import type { Weather } from './weather';

/** Bogacki & Shampine 1989, third order with an embedded second: nodes, weights and error weights. */
const NODES = [0, 1 / 2, 3 / 4, 1];
const WEIGHTS = [2 / 9, 1 / 3, 4 / 9, 0];
const ERROR = [-5 / 72, 1 / 12, 1 / 9, -1 / 8];

/** The error of a step that would use more carbon than there is, which no water can be solved for. */
const TOO_LONG = 1e9;

/** Species that cannot fall below nothing: all but the two remainders at the end. */
const TRACKED = indexOf.untrackedCharge;

/** One explicit step of the tank: the rates at four looks, and the extents that follow from them. */
export class Step {
  /** Moles that each reaction advances over the step. */
  readonly extents: Float64Array;
  /** Where the step starts and ends, and the slopes there (for what lies between). */
  readonly from = new Float64Array(BLOCK_SIZE);
  readonly to = new Float64Array(BLOCK_SIZE);
  readonly slopes = [0, 1, 2, 3].map(() => new Float64Array(BLOCK_SIZE));
  readonly tankMeanPerKg = new Float64Array(BLOCK_SIZE);
  fromH = 0;
  hours = 0;
  private trimmedH = 0;
  /** Chalk on the floor makes room for more: the one pool whose amount a rate depends on. */
  private readonly chalk: readonly Moving[];
  private readonly chalkAccounts: readonly number[];
  private chalkFromMol = 0;
  private readonly rates: readonly Float64Array[];
  private readonly stagePerKg = [0, 1, 2, 3].map(() => new Float64Array(BLOCK_SIZE));
  private readonly stage = new Float64Array(BLOCK_SIZE);

  constructor(
    private readonly channels: readonly Channel[],
    private readonly flows: Flows,
    private readonly weather: Weather,
    private readonly view: TankView,
    private readonly books: Books,
    private readonly oxygen: Oxygen,
  ) {
    this.chalk = movingPools(channels, books, 'fallenChalk');
    this.chalkAccounts = poolsWith('fallenChalk').map((id) => books.poolIndex(id));
    this.extents = new Float64Array(channels.length);
    this.rates = NODES.map(() => new Float64Array(channels.length));
  }

  /** Looks at the tank where the next step begins. */
  begin(tank: Float64Array, timeH: number): void {
    copyBlock(this.from, tank);
    this.fromH = timeH;
    this.chalkFromMol = this.chalkMol();
    this.showPrecipitate(0, 0, 0, 0);
    this.look(0, this.from, timeH);
  }

  /** The last look of an accepted step serves as the first of the next, if no valve was touched. */
  carryOn(tank: Float64Array, timeH: number): void {
    copyBlock(this.from, tank);
    this.fromH = timeH;
    this.chalkFromMol = this.chalkMol();
    copyBlock(this.slopes[0]!, this.slopes[3]!);
    const [first, last] = [this.rates[0]!, this.rates[3]!];
    for (let c = 0; c < first.length; c++) first[c] = last[c]!;
    this.oxygen.carryOn();
    if (this.flows.outKgPerH > 0) this.stagePerKg[0]!.set(this.stagePerKg[3]!);
  }

  /** Tries a step; returns the estimated error as µmol/kg of alkalinity or carbon, the larger. */
  attempt(hours: number): number {
    const { slopes } = this;
    const k1 = slopes[0]!;
    const k2 = slopes[1]!;
    const k3 = slopes[2]!;
    const k4 = slopes[3]!;
    const { from, stage, to } = this;
    this.hours = hours;
    this.trimmedH = 0;
    for (let i = 0; i < BLOCK_SIZE; i++) stage[i] = from[i]! + (hours / 2) * k1[i]!;
    if (stage[indexOf.DIC]! < 0) return TOO_LONG;
    this.showPrecipitate(hours, 1 / 2, 0, 0);
    this.look(1, stage, this.fromH + hours / 2);
    for (let i = 0; i < BLOCK_SIZE; i++) stage[i] = from[i]! + hours * 0.75 * k2[i]!;
    if (stage[indexOf.DIC]! < 0) return TOO_LONG;
    this.showPrecipitate(hours, 0, 3 / 4, 0);
    this.look(2, stage, this.fromH + hours * 0.75);
    for (let i = 0; i < BLOCK_SIZE; i++) {
      to[i] = from[i]! + (hours / 9) * (2 * k1[i]! + 3 * k2[i]! + 4 * k3[i]!);
    }
    if (to[indexOf.DIC]! < 0) return TOO_LONG;
    this.showPrecipitate(hours, 2 / 9, 1 / 3, 4 / 9);
    this.look(3, to, this.fromH + hours);
    let alkalinity = 0;
    for (let i = 0; i < WATER; i++) {
      const weight = alkalinityWeights[i]!;
      if (weight !== 0) alkalinity += weight * this.errorOf(i, k1, k2, k3, k4);
    }
    const carbon = this.errorOf(indexOf.DIC, k1, k2, k3, k4);
    return (hours * Math.max(Math.abs(alkalinity), Math.abs(carbon)) * 1e6) / this.view.solutionKg;
  }

  private errorOf(
    i: number,
    k1: Float64Array,
    k2: Float64Array,
    k3: Float64Array,
    k4: Float64Array,
  ) {
    return ERROR[0]! * k1[i]! + ERROR[1]! * k2[i]! + ERROR[2]! * k3[i]! + ERROR[3]! * k4[i]!;
  }

  /** Ends the step just tried a moment earlier. */
  trim(hours: number): void {
    this.trimmedH = hours;
    if (hours === 0) return;
    const last = this.slopes[3]!;
    for (let i = 0; i < BLOCK_SIZE; i++) this.to[i]! -= hours * last[i]!;
    this.hours -= hours;
  }

  /** Works out the extents of the step just tried. */
  finish(): void {
    const tried = this.hours + this.trimmedH;
    const last = this.rates[3]!;
    for (let c = 0; c < this.extents.length; c++) {
      let rate = 0;
      for (let s = 0; s < 3; s++) rate += WEIGHTS[s]! * this.rates[s]![c]!;
      this.extents[c] = tried * rate - this.trimmedH * last[c]!;
    }
    if (this.flows.outKgPerH === 0) return;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      let mean = 0;
      for (let s = 0; s < 3; s++) mean += WEIGHTS[s]! * this.stagePerKg[s]![i]!;
      this.tankMeanPerKg[i] = mean;
    }
  }

  /** Lets oxygen follow the step that was accepted. */
  breathe(): void {
    const { oxygen, from, to } = this;
    oxygen.advance(this.hours, this.extents, from[indexOf.O2]!, this.view);
    to[indexOf.O2] = oxygen.endMol;
    this.tankMeanPerKg[indexOf.O2] = oxygen.meanMolPerKg;
  }

  /** Whether the step would leave less than nothing of some species. */
  overdrawn(): boolean {
    for (let i = 0; i < TRACKED; i++) if (this.to[i]! < 0) return true;
    return false;
  }

  /** Names the process whose rate is no number. */
  refuse(): never {
    const culprit = this.channels.find(({ process }) => !Number.isFinite(process.rate(this.view)));
    throw new RangeError(
      `${culprit ? `'${culprit.id}'` : 'the water'} gave a number that is not finite`,
    );
  }

  /** Shows the chalk at a look: what there was, and what the looks before it let fall. */
  private showPrecipitate(hours: number, a: number, b: number, c: number): void {
    const { rates, chalk } = this;
    let mol = this.chalkFromMol;
    for (let i = 0; i < chalk.length; i++) {
      const part = chalk[i]!;
      const p = part.channel;
      const rate = a * rates[0]![p]! + b * rates[1]![p]! + c * rates[2]![p]!;
      mol += hours * part.moles * rate;
    }
    this.view.precipitateMol = mol;
  }

  private chalkMol(): number {
    let mol = 0;
    const { chalkAccounts, books } = this;
    for (let i = 0; i < chalkAccounts.length; i++) mol += books.amounts[chalkAccounts[i]!]!;
    return mol;
  }

  private look(stage: number, tank: Float64Array, timeH: number): void {
    const { view, channels, flows } = this;
    const tempC = this.weather.tempC(timeH);
    view.read(tank, timeH, tempC, this.weather.pco2AirUatm(timeH, tempC));
    const slope = this.slopes[stage]!;
    const rates = this.rates[stage]!;
    copyBlock(slope, flows.intoTank);
    let oxygenMolPerH = 0;
    for (let c = 0; c < channels.length; c++) {
      const { process, tankTerms, oxygenMol } = channels[c]!;
      const rate = process.rate(view);
      rates[c] = rate;
      oxygenMolPerH += oxygenMol * rate;
      for (let t = 0; t < tankTerms.length; t++) {
        const term = tankTerms[t]!;
        slope[term.index]! += term.moles * rate;
      }
    }
    this.oxygen.note(stage, oxygenMolPerH, view);
    if (flows.outKgPerH > 0) this.drain(this.stagePerKg[stage]!, slope, tank);
    // Oxygen stays as it was for the step's looks: it follows when the step is accepted.
    slope[indexOf.O2] = 0;
  }

  /** What leaves the tank with its water. */
  private drain(perKg: Float64Array, slope: Float64Array, tank: Float64Array): void {
    const inverseKg = 1 / solutionKg(tank);
    for (let i = 0; i < BLOCK_SIZE; i++) {
      perKg[i] = tank[i]! * inverseKg;
      slope[i]! -= this.flows.outKgPerH * perKg[i]!;
    }
  }
}
