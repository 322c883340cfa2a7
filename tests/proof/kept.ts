import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build, type Rolldown } from 'vite';

const root = new URL('../../', import.meta.url);

/** What tests read besides the modules that they import. */
const readFolders = ['scenarios', 'tests/reference/tables', 'tests/border/releases'];

function filesBelow(folder: string): string[] {
  return readdirSync(new URL(folder, root), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => `${parentPath}/${name}`)
    .toSorted();
}

const everywhere = [
  ...['package-lock.json', 'vitest.config.ts', 'tests/seed.ts'],
  ...readFolders.flatMap(filesBelow),
];

/** A fingerprint of a module with all that it imports, and of what every part stands on. */
async function made(entry: string): Promise<string> {
  const hash = createHash('sha256');
  for (const file of everywhere) hash.update(readFileSync(new URL(file, root)));
  const built = (await build({
    configFile: false,
    logLevel: 'error',
    plugins: [svelte()],
    build: { ssr: entry, write: false, minify: false },
  })) as Rolldown.RolldownOutput;
  for (const chunk of built.output) hash.update('code' in chunk ? chunk.code : chunk.source);
  return hash.digest('hex').slice(0, 12);
}

const known = new Map<string, Promise<string>>();

/** Made once for each module: all twins stand on the same. */
function fingerprint(entry: string): Promise<string> {
  const own = known.get(entry) ?? made(entry);
  known.set(entry, own);
  return own;
}

/**
 * A part of the proof, made once for a seed and the code that it tries: a proof takes hours, and what
 * was made before it was broken off, or before something else was mended, is not made again.
 */
export async function kept<Part>(
  name: string,
  entry: string | readonly string[],
  seed: number,
  make: () => Promise<Part>,
): Promise<Part> {
  const folder = new URL(`.proof/${seed}/`, root);
  const prints = await Promise.all([entry].flat().map((one) => fingerprint(one)));
  const file = new URL(`${name.replace(/[/,%]/g, '-')} ${prints.join('-')}.json`, folder);
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as Part;
  } catch {
    // Not made yet, or broken off while it was written.
  }
  console.log(`── ${name}`);
  const part = await make();
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, JSON.stringify(part));
  return part;
}
