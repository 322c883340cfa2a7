import type { ColumnId } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import { toFigures } from '../../shared/units/digits';
import { say } from '../../shared/words/mayBe';
import { figure } from '../../shared/words/figure';
import type { Asking } from '../ask/asking';
import type { Spread } from '../ask/outcome';
import type { Fan } from '../charts/ChartFan.svelte';
import type { Plans } from './plans.svelte';
import type { Trials } from './trials.svelte';
import type { ShownKind } from '../charts/chartKinds';
import type { ShownTrial } from './shownTrials';

const hasSpread = (spread: Spread, column: ColumnId): column is keyof Spread['below'] =>
  column in spread.below;

/** A lever that is still for so long rests. */
const REST_MS = 150;

/**
 * Where the tank of the selected trial may be: asked anew when that has come back and rests, told
 * coarsely where nothing stood before, and drawn about its line as it stands.
 */
export class MayBe {
  private spread: Spread | undefined = $state.raw();
  private rests: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly plans: Plans,
    private readonly trials: Trials,
    private readonly client: Asking,
  ) {}

  /** To be called when a trial has come back: asks once no other follows, since a dozen runs go into it. */
  follow(): void {
    clearTimeout(this.rests);
    this.rests = setTimeout(() => void this.ask(), REST_MS);
  }

  private async ask(): Promise<void> {
    const scenario = this.trials.of(this.plans.selected.id).answers;
    if (!scenario) return;
    // The line moves under a lever, its width hardly does: the last one stands until there is a finer.
    const rows = this.spread?.below.alkalinity_dkh.length;
    if (this.spread) this.spread = { ...this.spread, leaves: undefined };
    const tell = (coarse: Spread) => {
      if (coarse.below.alkalinity_dkh.length !== rows) this.spread = coarse;
    };
    const answer = await this.client.ask('spread', scenario, { tell });
    if (answer.kind === 'done') this.spread = answer.value;
  }

  /** Where nine of ten such tanks are, about the trial’s line. */
  fanOf(kind: ShownKind, { trace, ink }: ShownTrial): Fan | undefined {
    const { spread } = this;
    if (!spread || !hasSpread(spread, kind.column)) return undefined;
    const [below, above] = [spread.below[kind.column], spread.above[kind.column]];
    const line = readColumn(trace, kind.column).subarray(0, below.length);
    return {
      low: kind.shown(line.map((value, hour) => Math.max(0, value - below[hour]!))),
      high: kind.shown(line.map((value, hour) => value + above[hour]!)),
      ...{ className: ink.className, cut: true },
    };
  }

  /** Between what such tanks are at the end, and how many leave the limits on the way. */
  notesOn(kind: ShownKind, fan: Fan): readonly string[] {
    const last = fan.low.length - 1;
    const [low, high] = [fan.low, fan.high].map((side) => figure(toFigures(side[last]!, 2)));
    const told = say.between(low!, high!, Math.ceil(last / 24));
    const leaves = this.spread?.leaves;
    if (leaves === undefined || kind.column !== 'alkalinity_dkh') return [told];
    const { limits } = this.plans.selected.scenario;
    const [below, above] = kind.shown(
      Float64Array.of(limits.alkalinityLowDkh, limits.alkalinityHighDkh),
    );
    const band = [figure(toFigures(below!, 3)), figure(toFigures(above!, 3))] as const;
    return [told, say.leave(figure(Math.round(100 * leaves)), ...band)];
  }
}
