import * as Comlink from 'comlink';
import type { Scenario } from '../shared/scenario/schema';
import type { Outcome } from '../shared/verdict/outcome';
import { answering, type Answer } from './answer';
import { inSlices, SLICE_MS } from './engine/inSlices';
import { letMessagesIn } from './letMessagesIn';
import { TrialRun, type Run } from './engine/trialRun';
import { settling } from './engine/settle';
import { sampledOptions } from './engine/sampledOptions';
import type { GasSolution } from './studies/solveGas';
import type { Effect } from './studies/whatDidIt';

/** What a trial gives, as it crosses the border; the trace's buffer is handed over, not copied. */
export type TrialOutcome = Outcome;

export interface Progress {
  readonly hours: number;
  readonly of: number;
  /** The rows so far, when the run is long enough to want a look. */
  readonly partial: TrialOutcome | undefined;
}

const PARTIAL_EVERY_MS = 250;

/** Takes jobs by key: a newer job on the same key, or a cancel, ends the older one. */
export class TrialDesk {
  private readonly latest = new Map<string, number>();

  /** Runs a trial in slices; `report` hears of progress and of partial traces. */
  async run(
    key: string,
    job: number,
    scenario: Scenario,
    report?: (progress: Progress) => void,
  ): Promise<Answer<TrialOutcome>> {
    this.latest.set(key, job);
    const answer = await answering(() => this.runInSlices(key, job, scenario, report));
    return answer.kind === 'done' ? Comlink.transfer(answer, [answer.value.trace.buffer]) : answer;
  }

  /** Which single change between two plans moved the outcome most. */
  async whatDidIt(
    key: string,
    job: number,
    from: Scenario,
    to: Scenario,
  ): Promise<Answer<readonly Effect[]>> {
    this.latest.set(key, job);
    return answering(async () => {
      const { whatDidIt } = await import('./studies/whatDidIt');
      return whatDidIt(from, to, (plan) => this.runInSlices(key, job, plan));
    });
  }

  /** Undefined when a newer job on the same key, or a cancel, ended it. */
  private async runInSlices(
    key: string,
    job: number,
    scenario: Scenario,
    report?: (progress: Progress) => void,
  ): Promise<TrialOutcome | undefined> {
    const options = await sampledOptions(scenario);
    const goesOn = async () => {
      await letMessagesIn();
      return this.latest.get(key) === job;
    };
    const start = await inSlices(settling(scenario, options), goesOn);
    if (!start) return undefined;
    const trial = new TrialRun(scenario, options, undefined, start);
    let reported = performance.now();
    while (!trial.done) {
      const sliceBegun = performance.now();
      while (!trial.done && performance.now() - sliceBegun < SLICE_MS) trial.advance(24);
      if (trial.done) break;
      if (!(await goesOn())) return undefined;
      if (!report || performance.now() - reported < PARTIAL_EVERY_MS) continue;
      reported = performance.now();
      const partial = copyOf(trial.result());
      const progress = { hours: trial.hour, of: trial.hours, partial };
      report(Comlink.transfer(progress, [partial.trace.buffer]));
    }
    return outcomeOf(trial.result());
  }

  /** Works out kLa and photosynthesis from the keeper's pH readings; fetched when first asked for. */
  solveGas(scenario: Scenario): Promise<Answer<GasSolution>> {
    return answering(async () => (await import('./studies/solveGas')).solveGas(scenario));
  }

  /** What has to do with drills: fetched when it is first asked for. */
  async drills() {
    const { DrillDesk } = await import('./drillDesk');
    return Comlink.proxy(new DrillDesk());
  }

  /** What has to do with a test log: fetched when it is first asked for. */
  async log() {
    const { LogDesk } = await import('./logDesk');
    return Comlink.proxy(new LogDesk());
  }

  cancel(key: string): void {
    this.latest.delete(key);
  }
}

/** A run without what only tests look at. */
const outcomeOf = ({
  trace,
  crossings,
  lines,
  settled,
  stopped,
  omegaReference,
}: Run): TrialOutcome => ({
  trace,
  crossings,
  lines,
  settled,
  stopped,
  omegaReference,
});

/** A partial trace is copied: the run goes on writing into its own. */
function copyOf(run: Run): TrialOutcome {
  const { trace, crossings } = run;
  const partial = { ...trace, buffer: trace.buffer.slice(0) };
  return { ...outcomeOf(run), trace: partial, crossings: [...crossings] };
}
