import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { countCheck, countPlaywright, countVitest } from './counts.mjs';

/**
 * @typedef {object} Runner
 * @property {string} name
 * @property {string} script an npm script
 * @property {string[]} [args]
 * @property {Record<string, string>} [env]
 * @property {(ok: boolean) => import('./counts.mjs').Count} count
 */

export const reportFolder = mkdtempSync(join(tmpdir(), 'paper-reef-'));
const unitReport = join(reportFolder, 'units.json');
const pageReport = join(reportFolder, 'pages.json');

/**
 * One core each, so they go side by side.
 * @type {Runner[]}
 */
export const checks = [
  { name: 'types', script: 'check', count: countCheck },
  { name: 'lint', script: 'lint', count: countCheck },
  { name: 'format', script: 'format', count: countCheck },
  { name: 'dead code', script: 'deadcode', count: countCheck },
];

/**
 * Each takes the machine to itself.
 * @type {Runner[]}
 */
export const alone = [
  { name: 'build', script: 'build', count: countCheck },
  { name: 'size', script: 'size', count: countCheck },
  {
    name: 'unit tests',
    script: 'test:unit',
    args: ['--reporter=default', '--reporter=json', `--outputFile.json=${unitReport}`],
    count: (ok) => countVitest(ok, unitReport),
  },
  {
    name: 'page tests',
    script: 'test:pages',
    env: { PLAYWRIGHT_JSON_OUTPUT_FILE: pageReport },
    count: (ok) => countPlaywright(ok, pageReport),
  },
];
