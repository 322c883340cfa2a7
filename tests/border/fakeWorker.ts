import * as Comlink from 'comlink';
import { Desk } from '../../workers/desk/desk';
import type { Question } from '../../workers/desk/question';
import { questionNamed } from '../../workers/desk/questions';

type Find = (name: string) => Promise<Question<unknown, unknown, unknown>>;

/**
 * A worker in this realm: its desk stands behind a real message port, so that what crosses is cloned
 * or moved as in a browser. What it works at does not stop when it ends, but nothing is heard of it.
 */
class FakeWorker {
  private readonly channel = new MessageChannel();
  private readonly errors: ((event: Event) => void)[] = [];

  constructor(find: Find, opens: boolean) {
    const { port1, port2 } = this.channel;
    Comlink.expose(new Desk(find), port1);
    port2.start();
    if (!opens) setTimeout(() => this.fail(), 0);
  }

  postMessage = (message: unknown, transfer: Transferable[] = []) =>
    this.channel.port2.postMessage(message, transfer);
  addEventListener(type: string, heard: (event: never) => void): void {
    const listener = heard as (event: Event) => void;
    if (type === 'error') this.errors.push(listener);
    else this.channel.port2.addEventListener(type, listener);
  }
  removeEventListener(type: string, heard: (event: never) => void): void {
    this.channel.port2.removeEventListener(type, heard as (event: Event) => void);
  }
  terminate = () => this.channel.port2.close();
  /** A script that is not there, or an error that nobody caught. */
  fail = () => this.errors.forEach((heard) => heard(new Event('error')));
}

/** Opens such workers and counts those that have not ended. */
export class Workshop {
  alive = 0;
  opened = 0;
  /** Whether the next one's script is there. */
  opens = true;

  constructor(private readonly find: Find = questionNamed) {}

  open = (): Worker => {
    const worker = new FakeWorker(this.find, this.opens);
    this.alive++;
    this.opened++;
    const { terminate } = worker;
    worker.terminate = () => {
      this.alive--;
      terminate();
    };
    return worker as unknown as Worker;
  };
}
