import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Ends when the command has, however: what it was to make is there or not. */
const ended = (args: readonly string[], env: NodeJS.ProcessEnv): Promise<void> =>
  new Promise((done, failed) => {
    const child = spawn('npx', args, { stdio: ['ignore', 'inherit', 'inherit'], env });
    child.once('error', failed).once('exit', () => done());
  });

/** What a command of its own process writes as JSON into the file that it is told; its output is let through. */
export async function madeInChild<Made>(
  argsFor: (file: string) => readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Made> {
  const folder = mkdtempSync(join(tmpdir(), 'paper-reef-proof-'));
  try {
    const file = join(folder, 'made.json');
    await ended(argsFor(file), { ...process.env, ...env });
    return JSON.parse(readFileSync(file, 'utf8')) as Made;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
