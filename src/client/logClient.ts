import * as Comlink from 'comlink';
import type { LogDesk, TrialDoor } from '../../workers/trial.worker';

/** The desk that answers questions about a test log, in a worker of its own; fetched when first asked. */
export class LogClient {
  private desk: Promise<Comlink.Remote<LogDesk>> | undefined;

  get door(): Promise<Comlink.Remote<LogDesk>> {
    this.desk ??= Comlink.wrap<TrialDoor>(
      new Worker(new URL('../../workers/trial.worker.ts', import.meta.url), { type: 'module' }),
    ).log() as unknown as Promise<Comlink.Remote<LogDesk>>;
    return this.desk;
  }
}
