import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { indexOf } from '../../shared/species/block';
import { dissolved } from '../../shared/species/species';
import type { Crossing } from '../../shared/trace/trace';
import type { Line, LineQuantity } from '../../shared/verdict/lines';
import { Between } from './between';
import { Past, type Recent } from './past';
import type { Simulation } from './simulation';
import type { TankView } from './tankView';

type Read = (view: TankView, past: Past) => number;

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

/** One line, how its quantity stood last, and the worst that was seen of it. */
interface Watch extends Line {
  readonly read: Read;
  last: number;
  worst: number;
  worstH: number;
}

const isBeyond = ({ trouble, limit }: Line, value: number): boolean =>
  trouble === 'above' ? value > limit : value < limit;

/** Watches lines step by step and finds the moment each is passed. */
export class CrossingWatch {
  readonly found: Crossing[] = [];
  private readonly watches: Watch[];
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
    const { view } = simulation;
    this.past = new Past(before);
    this.between = new Between(simulation);
    this.looksBack = lines.some(({ quantity }) => quantity.endsWith('Change'));
    this.past.note(view);
    this.watches = lines.map((line) => {
      const read = quantities[line.quantity];
      return { ...line, read, last: read(view, this.past), worst: NaN, worstH: NaN };
    });
    for (const watch of this.watches) {
      if (isBeyond(watch, watch.last)) this.note(watch, view.timeH, 'outside');
    }
    this.noteWorst();
  }

  /** To be called after each step, before anything is switched. */
  check(): void {
    this.compare((watch) => this.locate(watch));
  }

  /** After a sudden event: what changed at this very moment. */
  checkJump(): void {
    this.compare(() => this.simulation.timeH);
  }

  get recent(): Recent {
    return this.past.recent;
  }

  /** The worst of each line, and when. */
  get worst(): readonly { readonly value: number; readonly timeH: number }[] {
    return this.watches.map(({ worst, worstH }) => ({ value: worst, timeH: worstH }));
  }

  private compare(when: (watch: Watch) => number): void {
    for (let i = 0; i < this.watches.length; i++) {
      const watch = this.watches[i]!;
      const now = watch.read(this.simulation.view, this.past);
      const isOut = isBeyond(watch, now);
      if (isOut !== isBeyond(watch, watch.last)) {
        this.note(watch, when(watch), isOut ? 'outside' : 'inside');
      }
      watch.last = now;
    }
    this.noteWorst();
    if (this.looksBack) this.past.note(this.simulation.view);
  }

  private note({ id }: Watch, timeH: number, into: Crossing['into']): void {
    this.found.push({ limit: id, timeH, into });
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
      if (watch.read(this.between.at(middle), this.past) > watch.limit === endsAbove) high = middle;
      else low = middle;
    }
    return step.fromH + (step.hours * (low + high)) / 2;
  }
}
