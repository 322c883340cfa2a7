import { BLOCK_SIZE, indexOf } from '../../shared/species/block';
import type { Simulation } from './simulation';
import { TankView } from './tankView';

/** The tank within the step just taken: a cubic through both ends and their slopes. */
export class Between {
  private readonly view = new TankView();
  private readonly state = new Float64Array(BLOCK_SIZE);

  constructor(private readonly simulation: Simulation) {}

  /** Part of the way through the step, 0 to 1; the view is written anew at each call. */
  at(part: number): TankView {
    const { step, plan } = this.simulation;
    const [k0, k1] = [step.begins.slope, step.ends.slope];
    const rest = 1 - part;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      const [a, b] = [step.from[i]!, step.to[i]!];
      const bend = (rest * k0[i]! - part * k1[i]!) * step.hours + (part - rest) * (b - a);
      this.state[i] = a * rest + b * part + part * rest * bend;
    }
    this.state[indexOf.O2] = this.simulation.oxygen.at(part);
    const timeH = step.fromH + part * step.hours;
    const tempC = plan.weather.tempC(timeH);
    this.view.read(this.state, timeH, tempC, plan.weather.pco2AirUatm(timeH, tempC));
    return this.view;
  }
}
