import { language } from '../../shared/words/language';

/** A worker that speaks the page's language. */
export const openWorker = (): Worker =>
  new Worker(new URL('../../workers/desk.worker.ts', import.meta.url), {
    type: 'module',
    name: language,
  });
