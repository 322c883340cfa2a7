import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Trial } from './vitest.mutants.config';

/** What came of a trial: the test that fell, if any, and how long each of the others took. */
export interface Came {
  readonly fell?: string;
  readonly timedOut?: true;
  readonly ms: ReadonlyMap<string, number>;
}

const vitest = [
  'node_modules/vitest/vitest.mjs',
  'run',
  '--config=tests/proof/mutation/vitest.mutants.config.ts',
  ...['--root=.', '--maxWorkers=1', '--bail=1'],
];

/** Ends a child with all that it has begun. */
const endWhole = ({ pid }: ChildProcess) => process.kill(-pid!, 'SIGKILL');

/** Begins the tests one after another until one is red, or takes longer than `patienceMs` says. */
export async function tried(
  trial: Trial,
  patienceMs: (test: string) => number,
  isFirst = true,
): Promise<Came> {
  const folder = mkdtempSync(join(tmpdir(), 'paper-reef-mutant-'));
  writeFileSync(join(folder, 'trial.json'), JSON.stringify(trial));
  const child = spawn(process.execPath, [...vitest, ...trial.tests], {
    stdio: ['ignore', 'pipe', 'ignore'],
    env: { ...process.env, TRIAL: join(folder, 'trial.json') },
    detached: true,
  });
  const ms = new Map<string, number>();
  let fell: string | undefined;
  let late: string | undefined;
  let timer = setTimeout(() => {}, 0);
  const waitFor = (test: string) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      late = test;
      endWhole(child);
    }, patienceMs(test));
  };
  waitFor(trial.tests[0]!);
  for await (const line of createInterface({ input: child.stdout })) {
    const [, what, test, took] = /^@(begun|green|red) (\S+.*?) ([\d.]*)$/.exec(line) ?? [];
    if (what === 'begun') waitFor(test!);
    if (what === 'green') ms.set(test!, Number(took));
    if (what === 'red') fell ??= test;
  }
  clearTimeout(timer);
  rmSync(folder, { recursive: true });
  if (fell) return { fell, ms };
  if (late) return { fell: late, timedOut: true, ms };
  // Once in some hundred the runner itself does not come up.
  if (ms.size < trial.tests.length && isFirst) return tried(trial, patienceMs, false);
  if (ms.size < trial.tests.length)
    throw new Error(`${ms.size} of ${trial.tests.length} tests were run: ${JSON.stringify(trial)}`);
  return { ms };
}
