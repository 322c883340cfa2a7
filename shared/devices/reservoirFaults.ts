import { Windows } from '../faults/windows';
import { INSTANT_H } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import type { Plant } from './device';
import { dissolveLime, limeMol, refill } from './reservoirMix';

/** What is wrong with what the reservoir holds: mixed too strong or too weak, or stirred up. */
export class ReservoirFaults {
  private readonly mixes;
  private readonly stirred;
  /** A wrong mix from before it last looked has been made already. */
  readonly memory = { lookedH: -Infinity };

  constructor(private readonly scenario: Scenario) {
    const { faults, start } = scenario;
    this.mixes = new Windows(faults, 'strongMix', start.clockHour);
    this.stirred = new Windows(faults, 'slurry', start.clockHour);
  }

  nextEdgeH(timeH: number): number {
    return Math.min(this.mixes.nextEdgeH(timeH), this.stirred.nextEdgeH(timeH));
  }

  /** What is weighed in at a refill now. */
  recipe(timeH: number): Scenario {
    const { topOff } = this.scenario;
    const times = this.mixes.at(timeH)?.times ?? 1;
    return { ...this.scenario, topOff: { ...topOff, gramsPerL: topOff.gramsPerL * times } };
  }

  /** The wrong mix takes the place of what was there; what is stirred up goes with the water. */
  act(timeH: number, plant: Plant): void {
    const { lookedH } = this.memory;
    this.memory.lookedH = timeH + INSTANT_H;
    if (this.mixes.all.some(({ fromH }) => fromH > lookedH && fromH <= timeH + INSTANT_H)) {
      plant.transfer('refill', 'reservoir', 'outside', plant.contents('reservoir').slice());
      refill(this.recipe(timeH), plant);
    }
    if (this.stirred.at(timeH)) dissolveLime(plant, limeMol(plant));
  }
}
