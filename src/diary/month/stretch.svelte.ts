import { hoursOf } from '../../../shared/log/localTime';
import { say } from '../../../shared/words/logPage';
import { windowAround, type TimeWindow } from '../../charts/timeWindow';
import { brushed, zoomOver, type Zoom } from '../../charts/zoomed';
import { BACK_H, type Reach } from './reach';

const QUARTER_H = 91 * 24;
const stretches = [
  { id: 'month', label: say.stretch.month, backH: BACK_H },
  { id: 'quarter', label: say.stretch.quarter, backH: QUARTER_H },
  { id: 'all', label: say.stretch.all, backH: Infinity },
] as const;
type StretchId = (typeof stretches)[number]['id'];

const moved = ({ fromH, toH }: TimeWindow, byH: number): TimeWindow => ({
  fromH: fromH + byH,
  toH: toH + byH,
});

/** Which days of the log are looked at, and which hour of them is read; the same days for every quantity. */
export class Stretch {
  private readonly reachOf: () => Reach;
  private readonly reach = $derived.by(() => this.reachOf());
  private readonly startH = $derived.by(() => hoursOf(this.reach.startAt));
  /** Undefined at rest; days that were looked at more nearly count from 1970. */
  private chosen: StretchId | TimeWindow | undefined = $state.raw();
  private readH: number | undefined = $state();

  constructor(reachOf: () => Reach) {
    this.reachOf = reachOf;
  }

  readonly window: TimeWindow = $derived.by(() => {
    const { chosen, reach } = this;
    if (chosen === undefined) return reach.rest;
    if (typeof chosen === 'string') return this.ofId(chosen);
    const { fromH, toH } = moved(chosen, -this.beginsH - this.startH);
    return moved(brushed(fromH, toH, this.totalH), this.beginsH);
  });
  readonly cursorH = $derived.by(() => {
    const { fromH, toH } = this.reach.whole;
    const atH = this.readH === undefined ? this.reach.endH : this.readH - this.startH;
    return Math.max(fromH, Math.min(toH, atH));
  });
  readonly isRead = $derived.by(() => this.readH !== undefined);
  readonly isChosen = $derived.by(() => this.chosen !== undefined);

  /** The log has so many hours, the first of which is this one. */
  readonly totalH = $derived.by(() => this.reach.whole.toH - this.reach.whole.fromH);
  readonly beginsH = $derived.by(() => this.reach.whole.fromH);

  /** Those that show something of their own. */
  readonly offered = $derived.by(() =>
    stretches
      .filter(({ backH }) => backH === Infinity || this.reach.endH - backH > this.beginsH)
      .map(({ id, label }) => ({ id, label, isShown: this.shows(this.ofId(id)) })),
  );

  /** By hours since the log begins, as a slider counts them. */
  readonly zoomWithin = zoomOver(
    () => ({ window: moved(this.window, -this.beginsH), totalH: this.totalH }),
    (at) => this.look(at),
  );
  readonly zoom: Zoom = {
    by: (atH, factor) => this.zoomWithin.by(atH - this.beginsH, factor),
    to: (aH, bH) => this.zoomWithin.to(aH - this.beginsH, bH - this.beginsH),
  };

  private ofId(id: StretchId): TimeWindow {
    const { whole, endH } = this.reach;
    const { backH } = stretches.find((one) => one.id === id)!;
    return { fromH: Math.max(whole.fromH, endH - backH), toH: whole.toH };
  }
  private shows({ fromH, toH }: TimeWindow): boolean {
    const { window } = this;
    return Math.abs(window.fromH - fromH) < 1 && Math.abs(window.toH - toH) < 1;
  }
  private look(at: TimeWindow): void {
    const isWhole = at.toH - at.fromH >= this.totalH;
    this.chosen = isWhole ? 'all' : moved(at, this.beginsH + this.startH);
  }

  show(id: StretchId): void {
    this.chosen = id;
  }

  read(timeH: number): void {
    this.readH = timeH + this.startH;
  }

  /** The days go along where an hour beside them is asked for. */
  follow(withinH: number): void {
    this.read(withinH + this.beginsH);
    const { fromH, toH } = moved(this.window, -this.beginsH);
    if (withinH < fromH || withinH > toH)
      this.look(windowAround(withinH, toH - fromH, this.totalH));
  }
}
