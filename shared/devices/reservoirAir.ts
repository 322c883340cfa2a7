import type { Scenario } from '../scenario/schema';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import type { Plant } from './device';

/** Limewater ages slowly: a look every few hours is enough. */
const EVERY_H = 6;
const chalking = new Reaction({ Ca: -1, airCO2: -1, reservoirChalk: 1 });

/** The room's CO2 turns limewater in the reservoir to chalk, a share of what is dissolved a day. */
export class ReservoirAir {
  private readonly sharePerH: number;
  readonly memory = { lastH: 0 };
  /** A tank taken over ages at the moments of the run in one go, not at that of being taken over. */
  private hasBegun = false;

  constructor({ topOff }: Scenario) {
    const ages = topOff.additive === 'calciumHydroxide' && topOff.lossPercentPerDay > 0;
    this.sharePerH = ages ? -Math.log(1 - topOff.lossPercentPerDay / 100) / 24 : 0;
  }

  nextClockH(timeH: number): number {
    return this.sharePerH === 0 ? Infinity : (Math.floor(timeH / EVERY_H + 1e-9) + 1) * EVERY_H;
  }

  act(timeH: number, plant: Plant): void {
    const isTakenOver = !this.hasBegun && timeH > 0;
    this.hasBegun = true;
    if (isTakenOver) return;
    const hours = timeH - this.memory.lastH;
    this.memory.lastH = timeH;
    if (this.sharePerH === 0) return;
    const lost = 1 - Math.exp(-this.sharePerH * hours);
    plant.react('reservoir', chalking, plant.contents('reservoir')[indexOf.Ca]! * lost);
  }
}
