import { valueAt } from '../../shared/scenario/change';
import type { Scenario } from '../../shared/scenario/schema';
import type { Spreads } from '../../shared/verdict/spreads';
import type { Asking } from '../ask/asking';
import { share } from '../ask/share';
import type { Answer } from '../ask/answer';
import type { Design, Layer, Lever } from '../ask/outcome';
import { levers, type DumpMapResult } from './levers';

/** Tanks that a search asks at every value, and those that a cell of the map asks. */
const MEMBERS = 40;
const MAP_MEMBERS = 9;
const SHARE = 0.95;
const MAP_COLUMNS = 12;
const STRENGTHS = [0, 0.15, 0.3, 0.5, 0.7, 0.9, 1.1, 1.3, 1.5];

/** What a full dump moves within hours: all of the keeper's limits for it, and the line of harm. */
export const dumpLines: readonly string[] = [
  'phHigh',
  'phHarm',
  'alkalinityHigh',
  'alkalinityChange',
  'salinityLow',
  'overflow',
];

/** A drill put backwards: how big may the reservoir be, how strong the mix, how fast the pump. */
export class HowBig {
  lever: Lever = $state('reservoirL');
  lines: readonly string[] = $state.raw(dumpLines);
  progress: number | undefined = $state();
  hour = $state(0);
  design: Design | undefined = $state.raw();
  /** What the answer was asked of. */
  asked:
    | {
        readonly scenario: Scenario;
        readonly lever: Lever;
        readonly lines: readonly string[];
      }
    | undefined = $state.raw();
  layers: readonly Layer[] = $state.raw([]);
  map: DumpMapResult | undefined = $state.raw();
  mapProgress: number | undefined = $state();
  trouble = $state('');

  constructor(private readonly client: Asking) {}

  toggle(line: string): void {
    const rest = this.lines.filter((one) => one !== line);
    this.lines = rest.length < this.lines.length ? rest : [...rest, line];
  }

  async ask(scenario: Scenario, spreads: Spreads): Promise<void> {
    const { client, lever, lines } = this;
    this.trouble = '';
    this.progress = 0;
    const hour = await client.ask('worstHour', { scenario, lines });
    if (hour.kind !== 'done') return this.fail(hour);
    this.hour = hour.value;
    const question = {
      ...{ scenario, lever, lines, spreads, share: SHARE, members: MEMBERS, seed: 1 },
      hour: hour.value,
    };
    const design = await client.ask('design', question, {
      tell: (done) => (this.progress = done),
    });
    if (design.kind !== 'done') return this.fail(design);
    this.progress = undefined;
    this.design = design.value;
    this.asked = { scenario, lever, lines };
    const layers = await client.ask('layers', { scenario, hour: hour.value });
    if (layers.kind === 'done') this.layers = layers.value;
    await this.draw(scenario, spreads, hour.value);
  }

  /** Reservoir against strength, row by row among the workers. */
  private async draw(scenario: Scenario, spreads: Spreads, hour: number): Promise<void> {
    const today = Number(valueAt(scenario, levers.reservoirL.path));
    const widest = Math.max(today * 1.25, scenario.tank.volumeL * 0.06);
    const reservoirsL = Array.from(
      { length: MAP_COLUMNS },
      (_, i) => (widest * (i + 1)) / MAP_COLUMNS,
    );
    const question = {
      ...{ scenario, spreads, hour, reservoirsL, strengthsGPerL: STRENGTHS },
      ...{ share: SHARE, members: MAP_MEMBERS, seed: 1 },
    };
    this.mapProgress = 0;
    const rows = STRENGTHS.map((_, row) => ({ question, row }));
    const onSome = (some: readonly unknown[]) => (this.mapProgress = some.length / rows.length);
    const answer = await share(this.client, 'mapRow', rows, { onSome });
    this.mapProgress = undefined;
    if (answer.kind !== 'done') return;
    this.map = { scenario, reservoirsL, strengthsGPerL: STRENGTHS, ph: answer.value };
  }

  private fail(answer: Exclude<Answer<unknown>, { kind: 'done' }>) {
    this.progress = undefined;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }
}
