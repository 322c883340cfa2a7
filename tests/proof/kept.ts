import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';

const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();

/**
 * A part of the proof, made once for a commit and a seed: a proof takes hours, and what was made
 * before it was broken off is not made again.
 */
export function kept<Part>(name: string, seed: number, make: () => Part): Part {
  const folder = new URL(`../../.proof/${commit}-${seed}/`, import.meta.url);
  const file = new URL(`${name.replace(/[/,%]/g, '-')}.json`, folder);
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as Part;
  } catch {
    // Not made yet, or broken off while it was written.
  }
  console.log(`── ${name}`);
  const part = make();
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, JSON.stringify(part));
  return part;
}
