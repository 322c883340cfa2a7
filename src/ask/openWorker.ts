/** A worker: it speaks no language, what it answers is said on the page. */
export const openWorker = (): Worker =>
  new Worker(new URL('../../workers/desk.worker.ts', import.meta.url), { type: 'module' });
