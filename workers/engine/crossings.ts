import { limitBands, type LimitId } from '../../shared/scenario/limitBands';
import type { Scenario } from '../../shared/scenario/schema';
import { BLOCK_SIZE, indexOf } from '../../shared/species/block';
import type { Crossing } from '../../shared/trace/trace';
import type { Simulation } from './simulation';
import { TankView } from './tankView';

const quantities: Record<LimitId, (view: TankView) => number> = {
  alkalinity: (view) => view.alkalinityDkh,
  ph: (view) => view.phNbs,
  calcium: (view) => view.mgPerL(indexOf.Ca, 40.078),
  magnesium: (view) => view.mgPerL(indexOf.Mg, 24.305),
  salinity: (view) => view.salinityPractical,
};

interface Watch {
  readonly limit: string;
  /** Above zero inside the keeper's band. */
  readonly inside: (view: TankView) => number;
  last: number;
}

const watchesOf = (scenario: Scenario): Watch[] =>
  limitBands(scenario.limits).flatMap(({ id, low, high }) => [
    { limit: `${id}Low`, inside: (view) => quantities[id](view) - low, last: NaN },
    { limit: `${id}High`, inside: (view) => high - quantities[id](view), last: NaN },
  ]);

/** Watches the keeper's limits step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly watches: Watch[];
  private readonly between = new TankView();
  private readonly state = new Float64Array(BLOCK_SIZE);

  constructor(private readonly simulation: Simulation) {
    this.watches = watchesOf(simulation.plan.scenario);
    for (const watch of this.watches) watch.last = watch.inside(simulation.view);
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    const { view, step } = this.simulation;
    for (const watch of this.watches) {
      const now = watch.inside(view);
      if (now >= 0 !== watch.last >= 0) {
        const timeH = step.fromH + step.hours * this.locate(watch, now);
        this.found.push({ limit: watch.limit, timeH, into: now >= 0 ? 'inside' : 'outside' });
      }
      watch.last = now;
    }
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    const { view, timeH } = this.simulation;
    for (const watch of this.watches) {
      const now = watch.inside(view);
      if (now >= 0 !== watch.last >= 0) {
        this.found.push({ limit: watch.limit, timeH, into: now >= 0 ? 'inside' : 'outside' });
      }
      watch.last = now;
    }
  }

  /** Bisection on the cubic between the ends of the step, to a ten-thousandth of it. */
  private locate(watch: Watch, end: number): number {
    let [low, high] = [0, 1];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      const inside = watch.inside(this.at(middle)) >= 0 === end >= 0;
      if (inside) high = middle;
      else low = middle;
    }
    return (low + high) / 2;
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
