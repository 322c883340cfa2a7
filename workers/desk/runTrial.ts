import type { Scenario } from '../../shared/scenario/schema';
import type { Outcome } from '../../shared/verdict/outcome';
import { inSlices, SLICE_MS } from '../engine/inSlices';
import { sampledOptions } from '../engine/sampledOptions';
import { settling } from '../engine/settle';
import { TrialRun, type Run } from '../engine/trialRun';
import { handOver } from './handOver';
import type { Job } from './question';

/** What a trial gives, as it crosses the border; the trace's buffer is handed over, not copied. */
export type TrialOutcome = Outcome;

export interface Progress {
  readonly hours: number;
  readonly of: number;
  /** The rows so far, when the run is long enough to want a look. */
  readonly partial: TrialOutcome | undefined;
}

const PARTIAL_EVERY_MS = 250;

/** Runs a trial in slices, telling of its progress and partial traces. */
export async function runTrial(
  scenario: Scenario,
  { goesOn, tell }: Pick<Job<Progress>, 'goesOn'> & Partial<Job<Progress>>,
): Promise<TrialOutcome | undefined> {
  const options = await sampledOptions(scenario);
  const start = await inSlices(settling(scenario, options), goesOn);
  if (!start) return undefined;
  const trial = new TrialRun(scenario, options, undefined, start);
  let told = performance.now();
  while (!trial.done) {
    const sliceBegun = performance.now();
    while (!trial.done && performance.now() - sliceBegun < SLICE_MS) trial.advance(24);
    if (trial.done) break;
    if (!(await goesOn())) return undefined;
    if (!tell || performance.now() - told < PARTIAL_EVERY_MS) continue;
    told = performance.now();
    const partial = copyOf(trial.result());
    const progress = { hours: trial.hour, of: trial.hours, partial };
    tell(handOver(progress, [partial.trace.buffer]));
  }
  const outcome = outcomeOf(trial.result());
  return handOver(outcome, [outcome.trace.buffer]);
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
