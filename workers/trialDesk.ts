import * as Comlink from 'comlink';
import type { Scenario } from '../shared/scenario/schema';
import type { Outcome } from '../shared/verdict/outcome';
import { TrialRun, type Run } from './engine/run';
import { solveGas, type GasSolution } from './studies/solveGas';

/** What a trial gives, as it crosses the border; the trace's buffer is handed over, not copied. */
export type TrialOutcome = Outcome;

/** Errors cross as values: a thrown one would lose its fields on the way. */
export interface Failure {
  readonly code: 'outOfRange' | 'unexpected';
  readonly message: string;
}

export type Answer<T> =
  | { readonly kind: 'done'; readonly value: T; readonly tookMs: number }
  | { readonly kind: 'superseded' }
  | { readonly kind: 'failed'; readonly failure: Failure };

export interface Progress {
  readonly hours: number;
  readonly of: number;
  /** The rows so far, when the run is long enough to want a look. */
  readonly partial: TrialOutcome | undefined;
}

/** Between slices of this length a cancel or a newer job may come in. */
const SLICE_MS = 12;
const PARTIAL_EVERY_MS = 250;

const failureOf = (error: unknown): Failure => ({
  code: error instanceof RangeError ? 'outOfRange' : 'unexpected',
  message: error instanceof Error ? error.message : String(error),
});

/** Lets messages that wait at the door (a cancel, a newer job) come in between two slices. */
const letMessagesIn = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });

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
    const begun = performance.now();
    let reported = begun;
    try {
      const trial = new TrialRun(scenario);
      while (!trial.done) {
        const sliceBegun = performance.now();
        while (!trial.done && performance.now() - sliceBegun < SLICE_MS) trial.advance(24);
        if (trial.done) break;
        await letMessagesIn();
        if (this.latest.get(key) !== job) return { kind: 'superseded' };
        if (report && performance.now() - reported > PARTIAL_EVERY_MS) {
          reported = performance.now();
          const partial = copyOf(trial.result());
          const progress = { hours: trial.hour, of: trial.hours, partial };
          report(Comlink.transfer(progress, [partial.trace.buffer]));
        }
      }
      const value = outcomeOf(trial.result());
      const tookMs = performance.now() - begun;
      return Comlink.transfer({ kind: 'done', value, tookMs }, [value.trace.buffer]);
    } catch (error) {
      return { kind: 'failed', failure: failureOf(error) };
    }
  }

  /** Works out kLa and photosynthesis from the keeper's pH readings. */
  solveGas(scenario: Scenario): Answer<GasSolution> {
    const begun = performance.now();
    try {
      const value = solveGas(scenario);
      return { kind: 'done', value, tookMs: performance.now() - begun };
    } catch (error) {
      return { kind: 'failed', failure: failureOf(error) };
    }
  }

  cancel(key: string): void {
    this.latest.delete(key);
  }
}

/** A run without what only tests look at. */
const outcomeOf = ({ trace, crossings, settled, stopped, omegaReference }: Run): TrialOutcome => ({
  trace,
  crossings,
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
