import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tried } from './trial';

const parts = ['shared', 'workers', 'src', 'scenarios', 'tests'];

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|svelte|json|csv)$/.test(entry.name))
    .map(({ parentPath, name }) => `${parentPath}/${name}`)
    .filter((name) => !name.startsWith('tests/proof'))
    .toSorted();

/** A folder of this code's own, for what is kept from run to run. */
export function keptFolder(): string {
  const hash = createHash('sha256');
  for (const file of parts.flatMap(filesBelow)) hash.update(file).update(readFileSync(file));
  const folder = `.proof/mutants/${hash.digest('hex').slice(0, 12)}`;
  mkdirSync(folder, { recursive: true });
  return folder;
}

/** How long each test takes without a mutant, ms. One that is red then could kill nothing. */
export async function usualMs(tests: readonly string[]): Promise<ReadonlyMap<string, number>> {
  const file = `${keptFolder()}/usual.json`;
  if (existsSync(file))
    return new Map(JSON.parse(readFileSync(file, 'utf8')) as [string, number][]);
  console.log('── every test without a mutant');
  const { fell, ms } = await tried({ tests }, () => 600_000);
  if (fell) throw new Error(`${fell} is red without any mutant.`);
  writeFileSync(file, JSON.stringify([...ms]));
  return ms;
}
