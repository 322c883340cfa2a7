import * as Comlink from 'comlink';
import type { Scenario } from '../../shared/scenario/schema';
import type { Answer, Progress, TrialDoor, TrialOutcome } from '../../workers/trial.worker';
import type { Effect, GasSolution } from '../../workers/trial.worker';
import { openDoor } from './openDoor';

type Door = Promise<Comlink.Remote<TrialDoor>>;

export interface TrialListener {
  done(outcome: TrialOutcome): void;
  failed(message: string): void;
  progress(progress: Progress): void;
}

interface Line {
  readonly door: Door;
  running: boolean;
  startedMs: number;
  waiting: (() => void) | undefined;
}

/** A running job younger than this is let finish: a drag would otherwise never see a result. */
const LET_FINISH_MS = 150;
const MOST_WORKERS = 2;

/**
 * Runs trials in workers. Each trial has its own line: one job runs, the newest waits, those
 * between are dropped.
 */
export class TrialClient {
  private readonly doors: Door[];
  private readonly lines = new Map<string, Line>();
  private jobs = 0;

  constructor() {
    const count = Math.max(1, Math.min(MOST_WORKERS, (navigator.hardwareConcurrency || 2) - 1));
    this.doors = Array.from({ length: count }, openDoor);
  }

  /** Asks for a trial; an older question under the same key is dropped or superseded. */
  request(key: string, scenario: Scenario, listener: TrialListener): void {
    const line = this.lineOf(key);
    line.waiting = () => void this.start(key, line, scenario, listener);
    if (!line.running) this.next(line);
    else if (performance.now() - line.startedMs > LET_FINISH_MS) void this.cancel(key, line);
  }

  /** Drops a trial that is no longer on the bench. */
  drop(key: string): void {
    const line = this.lines.get(key);
    if (!line) return;
    line.waiting = undefined;
    this.lines.delete(key);
    void this.cancel(key, line);
  }

  async solveGas(scenario: Scenario): Promise<Answer<GasSolution>> {
    return (await this.doors[0]!).solveGas(scenario);
  }

  /** Which single change between two plans moved the outcome most; a newer question wins. */
  async whatDidIt(from: Scenario, to: Scenario): Promise<Answer<readonly Effect[]>> {
    return (await this.doors.at(-1)!).whatDidIt('what did it', ++this.jobs, from, to);
  }

  private async cancel(key: string, { door }: Line): Promise<void> {
    await (await door).cancel(key);
  }

  private lineOf(key: string): Line {
    const known = this.lines.get(key);
    if (known) return known;
    const door = this.doors[this.lines.size % this.doors.length]!;
    const line: Line = { door, running: false, startedMs: 0, waiting: undefined };
    this.lines.set(key, line);
    return line;
  }

  private next(line: Line): void {
    const job = line.waiting;
    line.waiting = undefined;
    job?.();
  }

  private async start(
    key: string,
    line: Line,
    scenario: Scenario,
    listener: TrialListener,
  ): Promise<void> {
    let answered = false;
    line.running = true;
    line.startedMs = performance.now();
    try {
      // Trap: reports come through a port of their own and may arrive after the answer.
      const report = Comlink.proxy((progress: Progress) => {
        if (!answered) listener.progress(progress);
      });
      const door = await line.door;
      const answer = await door.run(key, ++this.jobs, scenario, report);
      answered = true;
      if (answer.kind === 'done') {
        const { tookMs } = answer;
        performance.measure('trial', { start: line.startedMs, detail: { engineMs: tookMs } });
        listener.done(answer.value);
      }
      if (answer.kind === 'failed') listener.failed(answer.failure.message);
    } catch (error) {
      listener.failed(error instanceof Error ? error.message : String(error));
    } finally {
      line.running = false;
      this.next(line);
    }
  }
}
