import type * as Comlink from 'comlink';
import type { LogDesk } from '../../workers/trial.worker';
import { openDoor } from './openDoor';

/** The desk that answers questions about a test log, in a worker of its own; fetched when first asked. */
export class LogClient {
  private desk: Promise<Comlink.Remote<LogDesk>> | undefined;

  get door(): Promise<Comlink.Remote<LogDesk>> {
    this.desk ??= openDoor().then((door) => door.log()) as unknown as Promise<
      Comlink.Remote<LogDesk>
    >;
    return this.desk;
  }
}
