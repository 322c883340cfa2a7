import type { ColumnId } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import { assumptionsOf } from '../charts/assumptionsIn';
import type { Fan } from '../charts/ChartFan.svelte';
import type { Series } from '../charts/chartScales';
import { spans, windowAround, type SpanId, type TimeWindow } from '../charts/timeWindow';
import { brushed, zoomOver } from '../charts/zoomed';
import type { Bench } from './bench.svelte';
import type { Plans } from './plans.svelte';
import type { TimeAt } from './timeAt.svelte';
import type { Trials } from './trials.svelte';
import { preferences } from '../store/preferences.svelte';
import { bandOf, chartKinds, FIRST, inUnits, type ShownKind } from '../charts/chartKinds';
import type { MayBe } from './mayBe.svelte';
import { sameTrials, shownTrials, steady, type ShownTrial } from './shownTrials';

/** Everything that one chart of the bench is drawn from. */
export interface Picture {
  readonly kind: ShownKind;
  readonly series: readonly Series[];
  readonly band: readonly [number, number] | undefined;
}

/** The bench's charts: one of them large, all over the same stretch of time and with one cursor. */
export class TrialPictures {
  private readonly plans: Plans;
  private readonly trials: Trials;
  private readonly cursor: TimeAt;
  /** Where the selected trial's tank may be; fetched a moment after the page. */
  mayBe: MayBe | undefined = $state.raw();
  spanId: SpanId = $state('all');
  private anchorH = $state(0);
  private large: ColumnId = $state(chartKinds[0]!.column);

  private readonly shown: readonly ShownTrial[] = $derived.by(
    steady(() => shownTrials(this.plans, this.trials), sameTrials),
  );
  readonly totalH = $derived.by(() =>
    Math.max(1, ...this.shown.map(({ trace }) => trace.rows - 1)),
  );
  readonly cursorH = $derived.by(() => Math.min(this.cursor.timeH, this.totalH));
  readonly clockHour = $derived.by(() => this.plans.selected.scenario.start.clockHour);
  /** Where it is looked at more nearly than a whole stretch. */
  private near: TimeWindow | undefined = $state.raw();
  readonly isNear = $derived.by(() => this.near !== undefined);
  readonly window = $derived(
    this.near
      ? brushed(this.near.fromH, this.near.toH, this.totalH)
      : windowAround(this.anchorH, spans.find(({ id }) => id === this.spanId)!.hours, this.totalH),
  );
  readonly zoom = zoomOver(
    () => this,
    (at) => this.look(at),
  );
  readonly assumes = $derived.by(() =>
    this.plans.all.map((plan) => assumptionsOf(plan.name, plan.scenario)),
  );
  private readonly all: readonly Picture[] = $derived(
    chartKinds.map((kind) => this.pictureOf(inUnits(kind, preferences.now))),
  );

  readonly hero = $derived(this.all.find(({ kind }) => kind.column === this.large)!);
  /** Those of everyday use, the large one left out. */
  readonly tiles = $derived(this.beside(this.all.slice(0, FIRST)));
  readonly folded = $derived(this.beside(this.all.slice(FIRST)));

  /** Where nine of ten tanks of the selected trial are, in the large chart: apart, so that a finer one draws no line anew. */
  readonly fan: Fan | undefined = $derived.by(() => {
    const own = this.shown.find(({ id }) => id === this.plans.selected.id);
    return own && this.mayBe?.fanOf(this.hero.kind, own);
  });

  constructor({ plans, trials, cursor }: Pick<Bench, 'plans' | 'trials' | 'cursor'>) {
    this.plans = plans;
    this.trials = trials;
    this.cursor = cursor;
  }

  /** What is said inside the large chart of where the tank may be. */
  readonly notes = $derived.by(() => {
    const { fan, mayBe } = this;
    return fan && mayBe ? mayBe.notesOn(this.hero.kind, fan) : [];
  });

  private beside(pictures: readonly Picture[]): readonly Picture[] {
    return pictures.filter(({ kind }) => kind.column !== this.large);
  }

  enlarge({ kind }: Picture): void {
    this.large = kind.column;
  }

  private look(near: TimeWindow): void {
    const isWhole = near.toH - near.fromH >= this.totalH;
    this.near = isWhole ? undefined : near;
    if (isWhole) this.spanId = 'all';
  }

  show(spanId: SpanId): void {
    this.near = undefined;
    this.anchorH = this.cursor.timeH;
    this.spanId = spanId;
  }

  /** Moves the cursor; the window goes along where it is moved from outside the charts. */
  moveCursor(timeH: number, follow: boolean): void {
    this.cursor.timeH = Math.round(timeH);
    const { fromH, toH } = this.window;
    if (!follow || (timeH >= fromH && timeH <= toH)) return;
    this.anchorH = timeH;
    if (this.near) this.near = windowAround(timeH, toH - fromH, this.totalH);
  }

  private pictureOf(kind: ShownKind): Picture {
    return {
      kind,
      band: bandOf(kind, this.plans.selected.scenario.limits),
      series: this.shown.map(({ id, name, ink, trace }) => ({
        key: id,
        label: name,
        className: ink.className,
        dash: ink.dash,
        values: kind.shown(readColumn(trace, kind.column)),
      })),
    };
  }
}
