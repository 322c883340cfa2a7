import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { BLOCK_SIZE, indexOf } from '../../shared/species/block';
import { dissolved } from '../../shared/species/species';
import type { Crossing } from '../../shared/trace/trace';
import type { Line, LineQuantity } from '../../shared/verdict/lines';
import { Past } from './past';
import type { Simulation } from './simulation';
import { TankView } from './tankView';

type Read = (view: TankView, past: Past) => number;

const { Ca, Mg } = dissolved;
const AMMONIA_G_PER_MOL = molarMassGPerMol({ N: 1, H: 3 });

const quantities: Record<LineQuantity, Read> = {
  alkalinity: (view) => view.alkalinityDkh,
  ph: (view) => view.phNbs,
  calcium: (view) => view.mgPerL(indexOf.Ca, Ca.molarMassG),
  magnesium: (view) => view.mgPerL(indexOf.Mg, Mg.molarMassG),
  salinity: (view) => view.salinityPractical,
  phChange: (view, past) => past.phChange(view),
  alkalinityChange: (view, past) => past.alkalinityChange(view),
  ammonia: (view) => view.mgPerL(indexOf.TAN, AMMONIA_G_PER_MOL) * view.unionisedAmmoniaFraction,
  omega: (view) => view.omegaAragonite,
  volume: (view) => view.volumeL,
};

/** One line, how its quantity stood last, and the worst that was seen of it. */
interface Watch extends Line {
  readonly read: Read;
  last: number;
  worst: number;
  worstH: number;
}

/** Watches lines step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly watches: Watch[];
  private readonly past = new Past();
  private readonly looksBack: boolean;
  private readonly between = new TankView();
  private readonly state = new Float64Array(BLOCK_SIZE);

  /** The worst is kept from a moment on. */
  constructor(
    private readonly simulation: Simulation,
    lines: readonly Line[],
    private readonly worstFromH = -Infinity,
  ) {
    const { view } = simulation;
    this.looksBack = lines.some(({ quantity }) => quantity.endsWith('Change'));
    this.past.note(view);
    this.watches = lines.map((line) => {
      const read = quantities[line.quantity];
      return { ...line, read, last: read(view, this.past), worst: NaN, worstH: NaN };
    });
    this.noteWorst();
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    if (this.looksBack) this.past.note(this.simulation.view);
    this.compare((watch) => this.locate(watch));
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    this.compare(() => this.simulation.timeH);
  }

  /** The worst of each line, and when. */
  get worst(): readonly { readonly value: number; readonly timeH: number }[] {
    return this.watches.map(({ worst, worstH }) => ({ value: worst, timeH: worstH }));
  }

  private compare(when: (watch: Watch) => number): void {
    for (let i = 0; i < this.watches.length; i++) {
      const watch = this.watches[i]!;
      const { last, limit, trouble } = watch;
      const now = watch.read(this.simulation.view, this.past);
      const isOut = trouble === 'above' ? now > limit : now < limit;
      const wasOut = trouble === 'above' ? last > limit : last < limit;
      if (isOut !== wasOut) {
        this.found.push({
          limit: watch.id,
          timeH: when(watch),
          into: isOut ? 'outside' : 'inside',
        });
      }
      watch.last = now;
    }
    this.noteWorst();
  }

  private noteWorst(): void {
    const { timeH } = this.simulation.view;
    if (timeH < this.worstFromH) return;
    for (const watch of this.watches) {
      const { last, worst, trouble } = watch;
      if (trouble === 'above' ? last <= worst : last >= worst) continue;
      watch.worst = last;
      watch.worstH = timeH;
    }
  }

  /** Bisection on the cubic between the ends of the step, to a ten-thousandth of it. */
  private locate(watch: Watch): number {
    const { step, view } = this.simulation;
    const endsAbove = watch.read(view, this.past) > watch.limit;
    let [low, high] = [0, 1];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (watch.read(this.at(middle), this.past) > watch.limit === endsAbove) high = middle;
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
