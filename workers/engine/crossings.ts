import { limitBands, type LimitId } from '../../shared/scenario/limitBands';
import { BLOCK_SIZE, indexOf } from '../../shared/species/block';
import { dissolved } from '../../shared/species/species';
import type { Crossing } from '../../shared/trace/trace';
import type { Simulation } from './simulation';
import { TankView } from './tankView';

const quantities: Record<LimitId, (view: TankView) => number> = {
  alkalinity: (view) => view.alkalinityDkh,
  ph: (view) => view.phNbs,
  calcium: (view) => view.mgPerL(indexOf.Ca, dissolved.Ca.molarMassG),
  magnesium: (view) => view.mgPerL(indexOf.Mg, dissolved.Mg.molarMassG),
  salinity: (view) => view.salinityPractical,
};

/** One quantity and the band it should stay in. */
interface Watch {
  readonly id: LimitId;
  readonly low: number;
  readonly high: number;
  readonly quantity: (view: TankView) => number;
  last: number;
}

/** Watches the keeper's limits step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly watches: Watch[];
  private readonly between = new TankView();
  private readonly state = new Float64Array(BLOCK_SIZE);

  constructor(private readonly simulation: Simulation) {
    this.watches = limitBands(simulation.plan.scenario.limits).map((band) => ({
      ...band,
      quantity: quantities[band.id],
      last: quantities[band.id](simulation.view),
    }));
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    this.compare((watch, limit) => this.locate(watch, limit));
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    this.compare(() => this.simulation.timeH);
  }

  private compare(when: (watch: Watch, limit: number) => number): void {
    for (let i = 0; i < this.watches.length; i++) {
      const watch = this.watches[i]!;
      const { last, low, high } = watch;
      const now = watch.quantity(this.simulation.view);
      if (now < low !== last < low) {
        const into = now < low ? 'outside' : 'inside';
        this.found.push({ limit: `${watch.id}Low`, timeH: when(watch, low), into });
      }
      if (now > high !== last > high) {
        const into = now > high ? 'outside' : 'inside';
        this.found.push({ limit: `${watch.id}High`, timeH: when(watch, high), into });
      }
      watch.last = now;
    }
  }

  /** Bisection on the cubic between the ends of the step, to a ten-thousandth of it. */
  private locate(watch: Watch, limit: number): number {
    const { step, view } = this.simulation;
    const endsAbove = watch.quantity(view) > limit;
    let [low, high] = [0, 1];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (watch.quantity(this.at(middle)) > limit === endsAbove) high = middle;
      else low = middle;
    }
    return step.fromH + (step.hours * (low + high)) / 2;
  }

  /** The tank part of the way through the step: a cubic through both ends and their slopes. */
  private at(part: number): TankView {
    const { step, plan } = this.simulation;
    const [k0, k1] = [step.slopes[0]!, step.slopes[3]!];
    const rest = 1 - part;
    for (let i = 0; i < BLOCK_SIZE; i++) {
      const [a, b] = [step.from[i]!, step.to[i]!];
      const bend = (rest * k0[i]! - part * k1[i]!) * step.hours + (part - rest) * (b - a);
      this.state[i] = a * rest + b * part + part * rest * bend;
    }
    const timeH = step.fromH + part * step.hours;
    const tempC = plan.weather.tempC(timeH);
    this.between.read(this.state, timeH, tempC, plan.weather.pco2AirUatm(timeH, tempC));
    return this.between;
  }
}
