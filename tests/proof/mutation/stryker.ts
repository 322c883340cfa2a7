import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Chance } from '../storage/chance';
import type { Mutant } from './mutant';

/** What is used of StrykerJS, whose packages only this folder installs. */
interface Stryker {
  Instrumenter: new (logger: object) => {
    instrument(
      files: readonly { name: string; mutate: true; content: string }[],
      options: object,
    ): Promise<{ mutants: Mutant[] }>;
  };
}

const here = fileURLToPath(new URL('.', import.meta.url));
const entry = './node_modules/@stryker-mutator/instrumenter/dist/src/index.js';

async function stryker(): Promise<Stryker> {
  if (!existsSync(new URL(entry, import.meta.url))) {
    const { status } = spawnSync('npm', ['ci', '--prefix', here], { stdio: 'inherit' });
    if (status !== 0) throw new Error('StrykerJS could not be installed.');
  }
  return (await import(new URL(entry, import.meta.url).href)) as Stryker;
}

const silent = { debug: () => {}, info: () => {}, isDebugEnabled: () => false };

/** All mutants of a folder, in the order of a seed: a larger draw holds the smaller one. */
export async function drawnFrom(folder: string, seed: number): Promise<Mutant[]> {
  const { Instrumenter } = await stryker();
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .toSorted()
    .map((name) => `${folder}/${name}`)
    .map((name) => ({ name, mutate: true as const, content: readFileSync(name, 'utf8') }));
  const { mutants } = await new Instrumenter(silent).instrument(files, {
    plugins: null,
    ignorers: [],
    excludedMutations: [],
  });
  const chance = new Chance(seed);
  for (let i = mutants.length - 1; i > 0; i--) {
    const j = chance.int(0, i);
    [mutants[i], mutants[j]] = [mutants[j]!, mutants[i]!];
  }
  return mutants;
}
