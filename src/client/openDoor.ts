import * as Comlink from 'comlink';
import { language } from '../../shared/words/language';
import type { TrialDoor } from '../../workers/trial.worker';

/** Opens a worker that speaks the page's language; its questions wait until it says that it listens. */
export async function openDoor(): Promise<Comlink.Remote<TrialDoor>> {
  const worker = new Worker(new URL('../../workers/trial.worker.ts', import.meta.url), {
    type: 'module',
    name: language,
  });
  await new Promise((listens) => worker.addEventListener('message', listens, { once: true }));
  return Comlink.wrap<TrialDoor>(worker);
}
