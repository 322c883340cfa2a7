import { Worker } from 'node:worker_threads';
import type { Print } from './engine';

const MEMBERS = 1000;
const DAYS = 14;

/** Runs a stretch of members in a thread of its own. */
const thread = (from: number, to: number): Promise<number> =>
  new Promise((resolve, reject) => {
    // Where the bundle of this benchmark lies.
    const worker = new Worker(new URL('./members.mjs', import.meta.url), {
      workerData: { from, to, days: DAYS },
    });
    worker.once('message', resolve);
    worker.once('error', reject);
  });

async function seconds(workers: number): Promise<number> {
  const begun = performance.now();
  const each = MEMBERS / workers;
  await Promise.all(Array.from({ length: workers }, (_, i) => thread(i * each, (i + 1) * each)));
  return (performance.now() - begun) / 1000;
}

/** 1,000 tanks for a fortnight, in one worker and in two. */
export async function benchEnsemble(print: Print): Promise<void> {
  const one = await seconds(1);
  const two = await seconds(2);
  print('ensemble_1000_members_14_days_one_worker', one, 's');
  print('ensemble_1000_members_14_days_two_workers', two, 's');
  print('ensemble_two_workers_over_one', two / one, 'ratio');
}
