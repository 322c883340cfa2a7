import type { Scenario } from '../../shared/scenario/schema';
import { usualSpreads, type SpreadId, type Spreads } from '../../shared/verdict/spreads';
import type { Asking } from '../ask/asking';
import { share } from '../ask/share';
import type { EnsembleSummary, MemberResult } from '../ask/outcome';

/** Members that one worker takes at a time: short enough to show progress. */
const PART = 8;
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

  constructor(private readonly client: Asking) {}

  setSpread(id: SpreadId, value: number): void {
    this.spreads = { ...this.spreads, [id]: value };
  }

  async ask(scenario: Scenario): Promise<void> {
    const { client, spreads, seed, members } = this;
    this.trouble = '';
    this.progress = 0;
    let summedUpMs = performance.now();
    let summingUp = Promise.resolve();
    const sumUp = async (some: readonly MemberResult[]) => {
      const answer = await client.ask('summary', some);
      if (answer.kind !== 'done') return;
      this.summary = answer.value;
      this.scenario = scenario;
    };
    const parts = Array.from({ length: Math.ceil(members / PART) }, (_, i) => ({
      ...{ scenario, spreads, seed },
      ...{ from: i * PART, to: Math.min(members, (i + 1) * PART) },
    }));
    const onSome = (parted: readonly MemberResult[][]) => {
      const some = parted.flat();
      this.progress = some.length / members;
      if (performance.now() - summedUpMs < SUM_UP_EVERY_MS) return;
      summedUpMs = performance.now();
      summingUp = sumUp(some);
    };
    const answer = await share(client, 'members', parts, { onSome });
    await summingUp;
    if (answer.kind === 'superseded' || answer.kind === 'cancelled') return;
    this.progress = undefined;
    if (answer.kind === 'failed') {
      this.trouble = answer.failure.message;
      return;
    }
    this.tookMs = answer.tookMs;
    await sumUp(answer.value.flat());
  }

  /** The tank at 95 %, as a plan of its own. */
  async highTank(): Promise<Scenario | undefined> {
    const { scenario, summary, spreads, seed, client } = this;
    if (!scenario || !summary) return undefined;
    const asked = { scenario, spreads, seed, index: summary.highMember };
    const answer = await client.ask('member', asked);
    return answer.kind === 'done' ? answer.value : undefined;
  }

  cancel(): void {
    this.progress = undefined;
    this.client.cancel('members');
  }
}
