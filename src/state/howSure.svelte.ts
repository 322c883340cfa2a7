import type { Scenario } from '../../shared/scenario/schema';
import { usualSpreads, type SpreadId, type Spreads } from '../../shared/verdict/spreads';
import type { DrillClient } from '../client/drillClient';
import type { EnsembleSummary } from '../client/outcome';

/** Partial results are summed up this often, ms. */
const SUM_UP_EVERY_MS = 600;

/** An ensemble over what the keeper does not know exactly, with its progress. */
export class HowSure {
  spreads: Spreads = $state.raw(usualSpreads);
  members = $state(200);
  seed = $state(1);
  progress: number | undefined = $state();
  summary: EnsembleSummary | undefined = $state.raw();
  /** The drill that the summary belongs to. */
  scenario: Scenario | undefined = $state.raw();
  trouble = $state('');
  tookMs = $state(0);

  constructor(private readonly client: DrillClient) {}

  setSpread(id: SpreadId, value: number): void {
    this.spreads = { ...this.spreads, [id]: value };
  }

  async ask(scenario: Scenario): Promise<void> {
    const { client, spreads, seed, members } = this;
    this.trouble = '';
    this.progress = 0;
    let summedUpMs = performance.now();
    let summingUp = Promise.resolve();
    const sumUp = async (some: Parameters<Parameters<DrillClient['ensemble']>[1]>[0]) => {
      const answer = await client.ask('summary', (desk) => desk.summary(some));
      if (answer.kind !== 'done') return;
      this.summary = answer.value;
      this.scenario = scenario;
    };
    const answer = await client.ensemble({ scenario, spreads, seed, members }, (some) => {
      this.progress = some.length / members;
      if (performance.now() - summedUpMs < SUM_UP_EVERY_MS) return;
      summedUpMs = performance.now();
      summingUp = sumUp(some);
    });
    await summingUp;
    if (answer.kind === 'superseded') return;
    this.progress = undefined;
    if (answer.kind === 'failed') {
      this.trouble = answer.failure.message;
      return;
    }
    this.tookMs = answer.tookMs;
    await sumUp(answer.value);
  }

  /** The tank at 95 %, as a plan of its own. */
  async highTank(): Promise<Scenario | undefined> {
    const { scenario, summary, spreads, seed, client } = this;
    if (!scenario || !summary) return undefined;
    return client.member({ scenario, spreads, seed, from: 0, to: 0 }, summary.highMember);
  }

  async cancel(): Promise<void> {
    this.progress = undefined;
    await this.client.cancel('ensemble');
  }
}
