import {
  alkalinityWeights,
  copyBlock,
  BLOCK_SIZE,
  indexOf,
  WATER,
  type Block,
} from '../../shared/species/block';
import { poolsWith } from '../../shared/species/species';
import type { Books } from './books';
import { Look, type Watched } from './look';
import type { Oxygen } from './oxygen';

/** The error of a step whose end no water can be solved for, since it would use more carbon than there is. */
export const TOO_LONG = 1e9;
/**
 * How much of the gap between where the drifts lead and where the end's look puts it is counted as
 * error: what is kept is the better of the two by far (`tests/runs/tolerance` measures how far).
 */
const PART_OF_GAP = 0.25;

/** Species that cannot fall below nothing: all but the two remainders at the end. */
const TRACKED = indexOf.untrackedCharge;

/**
 * One step of the tank by both its ends. Rates and drifts at its start lead to an end; a look there
 * gives rates and drifts that correct it (Hermite's formula, hairerNorsettWanner1993: h/2 of the
 * rates' sum, h²/12 of the drifts' difference). That look is the first of the next step.
 */
export class Step {
  /** Moles that each reaction advances over the step. */
  readonly extents: Float64Array;
  /** Where the step starts and ends. */
  readonly from = new Float64Array(BLOCK_SIZE);
  readonly to = new Float64Array(BLOCK_SIZE);
  readonly tankMeanPerKg = new Float64Array(BLOCK_SIZE);
  begins: Look;
  ends: Look;
  fromH = 0;
  hours = 0;
  private trimmedH = 0;
  private readonly led = new Float64Array(BLOCK_SIZE);
  private readonly chalkAccounts: readonly number[];
  private chalkFromMol = 0;
  /** Why the end of the step just tried is no water. */
  private trouble: unknown;

  constructor(
    readonly watched: Watched,
    private readonly books: Books,
    private readonly oxygen: Oxygen,
  ) {
    this.begins = new Look(watched);
    this.ends = new Look(watched);
    this.extents = new Float64Array(watched.channels.length);
    this.chalkAccounts = poolsWith('fallenChalk').map((id) => books.poolIndex(id));
  }

  /** Begins the next step from a tank that the view shows. */
  begin(tank: Block, timeH: number): void {
    this.startAt(tank, timeH);
    this.watched.view.precipitateMol = this.chalkFromMol;
    this.begins.here(1);
  }

  /** Works out what has changed of the look at the start: valves have turned, and perhaps lights. */
  turn(): void {
    if (this.watched.view.isSwitched) this.begins.rate(1);
    else this.begins.move(1);
  }

  /** The last look of an accepted step serves as the first of the next. */
  carryOn(tank: Block, timeH: number): void {
    const { begins, ends } = this;
    this.startAt(tank, timeH);
    this.begins = ends;
    this.ends = begins;
    if (ends.isAtCorner) ends.move(1);
  }

  private startAt(tank: Block, timeH: number): void {
    copyBlock(this.from, tank);
    this.fromH = timeH;
    this.chalkFromMol = this.chalkMol();
  }

  /** Tries a step; returns the estimated error as µmol/kg of alkalinity or carbon, the larger. */
  attempt(hours: number): number {
    const { from, led, begins, watched } = this;
    const { slope, bend, chalkMolPerH, chalkMolPerH2 } = begins;
    const half = hours / 2;
    this.hours = hours;
    this.trimmedH = 0;
    this.trouble = undefined;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      led[i] = from[i]! + hours * (slope[i]! + half * bend[i]!);
    }
    if (led[indexOf.DIC]! < 0) return TOO_LONG;
    watched.view.precipitateMol = this.chalkFromMol + hours * (chalkMolPerH + half * chalkMolPerH2);
    try {
      this.ends.at(led, this.fromH + hours, -1);
    } catch (error) {
      // Farther than its rates can be trusted; a shorter step may well be water.
      this.trouble = error;
      return TOO_LONG;
    }
    this.correct();
    if (this.to[indexOf.DIC]! < 0) return TOO_LONG;
    return (PART_OF_GAP * this.gapEq() * 1e6) / watched.view.solutionKg;
  }

  private correct(): void {
    const { from, to, hours } = this;
    const { slope: s0, bend: b0 } = this.begins;
    const { slope: s1, bend: b1 } = this.ends;
    const half = hours / 2;
    const twelfth = (hours * hours) / 12;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      to[i] = from[i]! + half * (s0[i]! + s1[i]!) + twelfth * (b0[i]! - b1[i]!);
    }
  }

  /** How far the look's end lay from the corrected one, the larger of alkalinity and carbon, mol. */
  private gapEq(): number {
    const { to, led } = this;
    let alkalinity = 0;
    for (let i = 0; i < WATER; i++) alkalinity += alkalinityWeights[i]! * (to[i]! - led[i]!);
    const carbon = to[indexOf.DIC]! - led[indexOf.DIC]!;
    return Math.max(Math.abs(alkalinity), Math.abs(carbon));
  }

  /** Ends the step just tried a moment earlier. */
  trim(hours: number): void {
    this.trimmedH = hours;
    if (hours === 0) return;
    const { slope } = this.ends;
    for (let i = 0; i < BLOCK_SIZE; i++) this.to[i]! -= hours * slope[i]!;
    this.hours -= hours;
  }

  /** Whether it ends before its last look, which then serves nothing but what a sensor calls for. */
  get isTrimmed(): boolean {
    return this.trimmedH > 0;
  }

  /** Works out the extents of the step just tried. */
  finish(): void {
    const { extents, trimmedH, tankMeanPerKg } = this;
    const { rates: r0, drifts: d0, perKg: p0, perKgPerH: m0 } = this.begins;
    const { rates: r1, drifts: d1, perKg: p1, perKgPerH: m1 } = this.ends;
    const tried = this.hours + trimmedH;
    const half = tried / 2;
    const twelfth = (tried * tried) / 12;
    for (let c = 0; c < extents.length; c++) {
      extents[c] = half * (r0[c]! + r1[c]!) + twelfth * (d0[c]! - d1[c]!) - trimmedH * r1[c]!;
    }
    if (this.watched.flows.outKgPerH === 0) return;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      tankMeanPerKg[i] = (p0[i]! + p1[i]!) / 2 + (tried / 12) * (m0[i]! - m1[i]!);
    }
  }

  /** Lets oxygen follow the step that was accepted. */
  breathe(): void {
    const { oxygen, from, led, to } = this;
    oxygen.advance(this, from[indexOf.O2]!, this.watched.view);
    to[indexOf.O2] = oxygen.endMol;
    led[indexOf.O2] = oxygen.endMol;
    this.tankMeanPerKg[indexOf.O2] = oxygen.meanMolPerKg;
  }

  /** Whether the step would leave less than nothing of some species. */
  overdrawn(): boolean {
    for (let i = 0; i < TRACKED; i++) if (this.to[i]! < 0) return true;
    return false;
  }

  /** Says why no step can be taken, or names the process whose rate is no number. */
  refuse(): never {
    if (this.trouble !== undefined) throw this.trouble;
    const { rates, drifts } = this.ends;
    const culprit = this.watched.channels.find(
      (_, c) => !Number.isFinite(rates[c]!) || !Number.isFinite(drifts[c]!),
    );
    throw new RangeError(
      `${culprit ? `'${culprit.id}'` : 'the water'} gave a number that is not finite`,
    );
  }

  private chalkMol(): number {
    let mol = 0;
    const { chalkAccounts, books } = this;
    for (let i = 0; i < chalkAccounts.length; i++) mol += books.amounts[chalkAccounts[i]!]!;
    return mol;
  }
}
