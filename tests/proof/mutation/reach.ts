import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const named = /(?:\bfrom|\bimport)\s*\(?\s*'(\.[^']+)'/g;
const ofTypes = /\b(?:import|export) type\b[^;]*;/g;

const endings = ['', '.ts', '.svelte.ts', '/index.ts'];

const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').replaceAll(ofTypes, '').matchAll(named)].flatMap(([, name]) => {
    const path = join(dirname(file), name!.replace(/\?.*$/, ''));
    const found = endings
      .map((ending) => path + ending)
      .find((one) => /\.(ts|svelte)$/.test(one) && existsSync(one));
    return found ?? [];
  });

function allBelow(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const one of importsOf(file)) allBelow(one, seen);
  return seen;
}

const tests = (): string[] =>
  readdirSync('tests', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `tests/${name}`);

/** Every unit test with all modules that it imports, directly or not. */
export const reaches = (): Map<string, Set<string>> =>
  new Map(tests().map((test) => [test, allBelow(test)]));
