import { spawn } from 'node:child_process';

/** Runs a command beside others, its output let through; resolves when it has ended, however. */
export const inChild = (
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<void> =>
  new Promise((ended, failed) => {
    const child = spawn('npx', args, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...env },
    });
    child.once('error', failed).once('exit', () => ended());
  });

/** Jobs in their order, so many at once; their results in the same order. */
export async function sideBySide<Result>(
  jobs: readonly (() => Promise<Result>)[],
  atOnce: number,
): Promise<Result[]> {
  const results: Result[] = [];
  const waiting = jobs.entries();
  const oneAfterTheOther = async () => {
    for (const [i, job] of waiting) results[i] = await job();
  };
  await Promise.all(Array.from({ length: atOnce }, oneAfterTheOther));
  return results;
}
