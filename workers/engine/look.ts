import type { Lead } from '../../shared/processes/process';
import { oxygenSaturationUmolPerKg } from '../../shared/seawater/oxygen';
import { BLOCK_SIZE, copyBlock, indexOf, type Block } from '../../shared/species/block';
import type { Channel } from './channels';
import type { Flows } from './flows';
import type { Reactions } from './reactions';
import type { TankMotion } from './tankMotion';
import type { TankView } from './tankView';
import type { Weather } from './weather';

/** What a look needs: the same for all looks of a tank. */
export interface Watched {
  readonly channels: readonly Channel[];
  readonly reactions: Reactions;
  readonly flows: Flows;
  readonly weather: Weather;
  readonly view: TankView;
  readonly motion: TankMotion;
}

/** Less than this is the rounding of a quotient. */
const BENT_C_PER_H = 1e-4;
const BENT_UATM_PER_H = 1e-2;

/** Which way a look asks how the room's air and heat move: what leads to it, or what follows. */
export type Side = -1 | 1;

/** What one look at the tank leaves: how fast everything goes, and how that drifts. */
export class Look {
  /** mol/h of each reaction, and how that changes in an hour. */
  readonly rates: Float64Array;
  readonly drifts: Float64Array;
  /** What each amount of the tank gains in an hour, and how that changes in an hour. */
  readonly slope = new Float64Array(BLOCK_SIZE);
  readonly bend = new Float64Array(BLOCK_SIZE);
  /** A kilogram of the tank's water and how it changes in an hour; written while some runs out. */
  readonly perKg = new Float64Array(BLOCK_SIZE);
  readonly perKgPerH = new Float64Array(BLOCK_SIZE);
  tempC = 25.5;
  salinityPractical = 35.5;
  kg = 0.5;
  private airOxygenMol = NaN;
  saltKgPerH = 0.5;
  /** How the saturation with aragonite changes in an hour. */
  omegaPerH = 0.5;
  private tempCPerH = 0;
  private pco2AirUatmPerH = 0;
  chalkMolPerH = 0.5;
  chalkMolPerH2 = 0.5;
  /** Oxygen that life gives (+) or takes (−), mol/h, and how that changes in an hour. */
  lifeMolPerH = 0.5;
  lifeMolPerH2 = 0.5;
  private readonly lead = { molPerH: 0.5, driftMolPerH2: 0.5 } satisfies Lead;

  constructor(private readonly watched: Watched) {
    this.rates = new Float64Array(watched.channels.length);
    this.drifts = new Float64Array(watched.channels.length);
  }

  /** Looks at a tank at a moment. */
  at(tank: Block, timeH: number, side: Side): void {
    const { view, weather } = this.watched;
    const tempC = weather.tempC(timeH);
    view.read(tank, timeH, tempC, weather.pco2AirUatm(timeH, tempC));
    this.here(side);
  }

  /** Looks at the tank that the view shows. */
  here(side: Side): void {
    const { view } = this.watched;
    this.tempC = view.tempC;
    this.salinityPractical = view.salinityPractical;
    this.kg = view.solutionKg;
    this.airOxygenMol = NaN;
    this.rate(side);
  }

  /** Oxygen that the air would hold the tank at, mol. */
  get airMol(): number {
    if (Number.isNaN(this.airOxygenMol)) {
      const umolPerKg = oxygenSaturationUmolPerKg(this.tempC, this.salinityPractical);
      this.airOxygenMol = umolPerKg * 1e-6 * this.kg;
    }
    return this.airOxygenMol;
  }

  /** Asks every process again: the water is the same, the light or the air is not. */
  rate(side: Side): void {
    const { channels, reactions, view } = this.watched;
    const { rates } = this;
    view.isSwitched = false;
    for (let c = 0; c < channels.length; c++) {
      const { process, lead } = channels[c]!;
      rates[c] = process.rate(view, process.settings, lead < 0 ? 0 : rates[lead]!);
    }
    this.chalkMolPerH = reactions.chalkOf(rates);
    this.lifeMolPerH = reactions.oxygenOf(rates);
    this.move(side);
  }

  /** Works out anew where the tank goes: rates are the same, valves have turned. */
  move(side: Side): void {
    const { reactions, flows, view, motion, weather } = this.watched;
    const { slope } = this;
    copyBlock(slope, flows.intoTank);
    reactions.addTo(slope, this.rates);
    if (flows.outKgPerH > 0) this.drain();
    // Oxygen stays as it was for the step's looks: it follows when the step is accepted.
    slope[indexOf.O2] = 0;
    if (weather.moves) {
      this.tempCPerH = weather.tempCPerH(view.timeH, side);
      this.pco2AirUatmPerH = weather.pco2AirUatmPerH(view.timeH, side);
    }
    motion.tempC = this.tempCPerH;
    motion.pco2AirUatm = this.pco2AirUatmPerH;
    motion.precipitateMol = this.chalkMolPerH;
    motion.follow(view, slope);
    this.saltKgPerH = motion.saltKg;
    this.omegaPerH = motion.omegaAragonite;
    this.drift();
  }

  /** Whether the room or the warmth bends at this look: what follows is not what led to it. */
  get isAtCorner(): boolean {
    const { weather, view } = this.watched;
    if (!weather.moves) return false;
    const [degrees, air] = [
      weather.tempCPerH(view.timeH, 1) - this.tempCPerH,
      weather.pco2AirUatmPerH(view.timeH, 1) - this.pco2AirUatmPerH,
    ];
    return Math.abs(degrees) > BENT_C_PER_H || Math.abs(air) > BENT_UATM_PER_H;
  }

  private drift(): void {
    const { channels, reactions, flows, view, motion } = this.watched;
    const { rates, drifts, bend, lead } = this;
    for (let c = 0; c < channels.length; c++) {
      const { process, lead: leader } = channels[c]!;
      if (!process.drift) continue;
      if (leader >= 0) {
        lead.molPerH = rates[leader]!;
        lead.driftMolPerH2 = drifts[leader]!;
      }
      drifts[c] = process.drift(view, motion, process.settings, lead);
    }
    this.chalkMolPerH2 = reactions.chalkOf(drifts);
    this.lifeMolPerH2 = reactions.oxygenOf(drifts);
    bend.fill(0);
    reactions.addTo(bend, drifts);
    if (flows.outKgPerH > 0) this.bendByDrain();
    bend[indexOf.O2] = 0;
  }

  /** What leaves the tank with its water. */
  private drain(): void {
    const { flows, view } = this.watched;
    const { perKg, slope } = this;
    const { amounts } = view;
    const inverseKg = 1 / view.solutionKg;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      perKg[i] = amounts[i]! * inverseKg;
      slope[i]! -= flows.outKgPerH * perKg[i]!;
    }
  }

  private bendByDrain(): void {
    const { flows, view, motion } = this.watched;
    const { perKg, perKgPerH, slope, bend } = this;
    const inverseKg = 1 / view.solutionKg;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      perKgPerH[i] = (slope[i]! - perKg[i]! * motion.solutionKg) * inverseKg;
      bend[i]! -= flows.outKgPerH * perKgPerH[i]!;
    }
  }
}
