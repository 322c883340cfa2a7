import { readFileSync } from 'node:fs';

const folder = new URL('../dist/', import.meta.url);
const read = (/** @type {string} */ path) => readFileSync(new URL(path, folder), 'utf8');

const STATIC_IMPORT = /(?:from|import)\s*["']\.\/([\w.-]+\.js)["']/g;
const WORKER = /new URL\(\s*["'`]([\w./-]*worker[\w.-]*\.js)["'`]/g;

/** @param {string} text @param {RegExp} pattern */
const named = (text, pattern) => [...text.matchAll(pattern)].map(([, name]) => name ?? '');

/** Built files that open with the page: its script, what that imports statically, its workers. */
export function firstLoad() {
  const entry = named(read('index.html'), /<script[^>]*src="\.\/assets\/([\w.-]+\.js)"/g);
  if (entry.length === 0) throw new Error('dist/index.html names no script: build first.');
  const found = new Set(entry);
  for (const name of found) {
    const text = read(`assets/${name}`);
    const workers = named(text, WORKER).map((path) => path.split('/').at(-1) ?? '');
    for (const next of [...named(text, STATIC_IMPORT), ...workers]) found.add(next);
  }
  return [...found].map((name) => `dist/assets/${name}`);
}
