import { Windows } from '../faults/windows';
import type { Scenario } from '../scenario/schema';
import type { Plant } from './device';
import { refill } from './reservoirMix';

/** What is wrong with what the reservoir holds: mixed too strong or too weak, or stirred up. */
export class ReservoirFaults {
  private readonly mixes;
  private readonly stirred;
  private mixed = 0;

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
    if (this.mixes.all.length + this.stirred.all.length === 0) return;
    const begun = this.mixes.all.filter(({ fromH }) => fromH <= timeH + 1e-9).length;
    if (begun > this.mixed) {
      this.mixed = begun;
      plant.transfer('refill', 'reservoir', 'outside', plant.contents('reservoir').slice());
      refill(this.recipe(timeH), plant);
    }
    if (this.stirred.at(timeH)) plant.dissolveLime('reservoir', plant.limeMol());
  }
}
