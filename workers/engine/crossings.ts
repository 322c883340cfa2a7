import type { Crossing } from '../../shared/trace/trace';
import type { Line } from '../../shared/verdict/lines';
import { Between } from './between';
import { Gauge, type WatchedLine } from './gauge';
import { Past, type Recent } from './past';
import { newQuantities, placeOf, readQuantities } from './quantities';
import type { Simulation } from './simulation';

/** Watches lines step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly gauges: readonly Gauge[];
  private readonly lines: readonly WatchedLine[];
  private readonly past: Past;
  private readonly looksBack: boolean;
  private readonly between: Between;
  private readonly now = newQuantities();
  private readonly within = newQuantities();

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
    const gauges = new Map(names.map((name) => [name, new Gauge(placeOf[name])]));
    this.gauges = [...gauges.values()];
    this.lines = lines.map((line) => {
      const gauge = gauges.get(line.quantity)!;
      const watched = { ...line, gauge, isOut: false, worst: NaN, worstH: NaN };
      gauge.lines.push(watched);
      return watched;
    });
    this.compare(false);
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    this.compare(true);
    if (this.looksBack) this.past.note(this.simulation.view);
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    this.compare(false);
    if (this.looksBack) this.past.note(this.simulation.view);
  }

  get recent(): Recent {
    return this.past.recent;
  }

  /** The worst of each line, and when. */
  get worst(): readonly { readonly value: number; readonly timeH: number }[] {
    return this.lines.map(({ worst, worstH }) => ({ value: worst, timeH: worstH }));
  }

  /** What was passed on the way is located within the step; else it is passed at this moment. */
  private compare(onTheWay: boolean): void {
    const { gauges, past, now } = this;
    const { view } = this.simulation;
    readQuantities(view, past, now);
    let stirred = false;
    for (let i = 0; i < gauges.length; i++) {
      if (gauges[i]!.look(now)) stirred = true;
    }
    if (!stirred) return;
    for (const line of this.lines) {
      const { gauge, id, limit } = line;
      if (!gauge.stirred || !gauge.passes(line)) continue;
      this.found.push({
        limit: id,
        timeH: onTheWay ? this.locate(gauge, limit) : view.timeH,
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
  private locate({ now, place }: Gauge, limit: number): number {
    const { step } = this.simulation;
    const endsAbove = now > limit;
    let [low, high] = [0, 1];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      readQuantities(this.between.at(middle), this.past, this.within);
      if (this.within[place]! > limit === endsAbove) high = middle;
      else low = middle;
    }
    return step.fromH + (step.hours * (low + high)) / 2;
  }
}
