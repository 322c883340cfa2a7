import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { indexOf } from '../../shared/species/block';
import { dissolved } from '../../shared/species/species';
import type { Crossing } from '../../shared/trace/trace';
import type { Line, LineQuantity } from '../../shared/verdict/lines';
import { Between } from './between';
import { Gauge, type Read, type WatchedLine } from './gauge';
import { Past, type Recent } from './past';
import type { Simulation } from './simulation';

const { Ca, Mg } = dissolved;
const AMMONIA_G_PER_MOL = molarMassGPerMol({ N: 1, H: 3 });

const quantities: Record<LineQuantity, Read> = {
  alkalinity: (view) => view.alkalinityDkh,
  ph: (view) => view.phNbs,
  calcium: (view) => view.mgPerL(indexOf.Ca, Ca.molarMassG),
  magnesium: (view) => view.mgPerL(indexOf.Mg, Mg.molarMassG),
  salinity: (view) => view.salinityPractical,
  temperature: (view) => view.tempC,
  phChange: (view, past) => past.phChange(view),
  alkalinityChange: (view, past) => past.alkalinityChange(view),
  oxygen: (view) => view.oxygenMgPerL,
  ammonia: (view) => view.mgPerL(indexOf.TAN, AMMONIA_G_PER_MOL) * view.unionisedAmmoniaFraction,
  omega: (view) => view.omegaAragonite,
  volume: (view) => view.volumeL,
};

/** Watches lines step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly gauges: readonly Gauge[];
  private readonly lines: readonly WatchedLine[];
  private readonly past: Past;
  private readonly looksBack: boolean;
  private readonly between: Between;

  /** The worst is kept from a moment on; `before` is the day that led here. */
  constructor(
    private readonly simulation: Simulation,
    lines: readonly Line[],
    readonly worstFromH = -Infinity,
    before?: Recent,
  ) {
    this.past = new Past(before);
    this.between = new Between(simulation);
    this.looksBack = lines.some(({ quantity }) => quantity.endsWith('Change'));
    this.past.note(simulation.view);
    const names = [...new Set(lines.map(({ quantity }) => quantity))];
    const gauges = new Map(names.map((name) => [name, new Gauge(quantities[name])]));
    this.gauges = [...gauges.values()];
    this.lines = lines.map((line) => {
      const gauge = gauges.get(line.quantity)!;
      const watched = { ...line, gauge, isOut: false, worst: NaN, worstH: NaN };
      gauge.lines.push(watched);
      return watched;
    });
    this.compare(() => simulation.view.timeH);
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    this.compare((gauge, limit) => this.locate(gauge, limit));
    if (this.looksBack) this.past.note(this.simulation.view);
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    this.compare(() => this.simulation.timeH);
    if (this.looksBack) this.past.note(this.simulation.view);
  }

  get recent(): Recent {
    return this.past.recent;
  }

  /** The worst of each line, and when. */
  get worst(): readonly { readonly value: number; readonly timeH: number }[] {
    return this.lines.map(({ worst, worstH }) => ({ value: worst, timeH: worstH }));
  }

  private compare(when: (gauge: Gauge, limit: number) => number): void {
    const { gauges, past } = this;
    const { view } = this.simulation;
    let stirred = false;
    for (let i = 0; i < gauges.length; i++) {
      if (gauges[i]!.look(view, past)) stirred = true;
    }
    if (!stirred) return;
    for (const line of this.lines) {
      const { gauge, id, limit } = line;
      if (!gauge.stirred || !gauge.passes(line)) continue;
      this.found.push({
        limit: id,
        timeH: when(gauge, limit),
        into: line.isOut ? 'outside' : 'inside',
      });
    }
    for (const gauge of gauges) {
      if (!gauge.stirred) continue;
      if (view.timeH >= this.worstFromH) gauge.noteWorst(view.timeH);
      gauge.settle();
    }
  }

  /** Bisection on the cubic between the ends of the step, to a ten-thousandth of it. */
  private locate({ now, read }: Gauge, limit: number): number {
    const { step } = this.simulation;
    const endsAbove = now > limit;
    let [low, high] = [0, 1];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (read(this.between.at(middle), this.past) > limit === endsAbove) high = middle;
      else low = middle;
    }
    return step.fromH + (step.hours * (low + high)) / 2;
  }
}
