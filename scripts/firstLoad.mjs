import { readdirSync, readFileSync } from 'node:fs';

const folder = 'dist/assets';
const STATIC_IMPORT = /(?:from|import)\s*["'`]\.\/([\w.-]+\.js)["'`]/g;

/** @param {string} file @param {Set<string>} found */
function withImports(file, found) {
  if (found.has(file)) return;
  found.add(file);
  const text = readFileSync(`${folder}/${file}`, 'utf8');
  for (const [, imported = ''] of text.matchAll(STATIC_IMPORT)) withImports(imported, found);
}

/** Scripts that a first visit cannot do without: page and workers, with what they import statically. */
export function firstLoad() {
  const found = new Set(/** @type {string[]} */ ([]));
  const [, page = ''] =
    /src="\.\/assets\/([\w.-]+\.js)"/.exec(readFileSync('dist/index.html', 'utf8')) ?? [];
  withImports(page, found);
  for (const file of readdirSync(folder))
    if (/\.worker-.*\.js$/.test(file)) withImports(file, found);
  return [...found].map((file) => `${folder}/${file}`);
}
