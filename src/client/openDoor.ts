import * as Comlink from 'comlink';
import { language } from '../../shared/words/language';
import type { TrialDoor } from '../../workers/trial.worker';

/** A worker's door, and the way to end whatever goes on behind it. */
export interface OpenDoor {
  readonly door: Comlink.Remote<TrialDoor>;
  readonly end: () => void;
}

/** Opens a worker that speaks the page's language; its questions wait until it says that it listens. */
export async function openWorker(): Promise<OpenDoor> {
  const worker = new Worker(new URL('../../workers/trial.worker.ts', import.meta.url), {
    type: 'module',
    name: language,
  });
  await new Promise((listens) => worker.addEventListener('message', listens, { once: true }));
  return { door: Comlink.wrap<TrialDoor>(worker), end: () => worker.terminate() };
}

export const openDoor = async (): Promise<Comlink.Remote<TrialDoor>> => (await openWorker()).door;
