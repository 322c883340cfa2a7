import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { chromiumPath, launchArgs } from '../../../scripts/chromium.mjs';
import type { Attacked } from './attacked';
import { conditionsAttack } from './conditions';
import { killsAttack } from './kills';
import { offlineAttack } from './offline';
import { recordsAttack } from './records';
import { PageServer } from './server';
import { windowsAttack } from './windows';

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    short: { type: 'boolean', default: false },
    seed: { type: 'string', default: '1' },
    times: { type: 'string' },
    out: { type: 'string' },
  },
});
const { short } = values;
const from = Number(values.seed);
const seeds = (full: number, few: number) =>
  Array.from({ length: Number(values.times ?? (short ? few : full)) }, (_, i) => from + i);

const folder = mkdtempSync(join(tmpdir(), 'paper-reef-attack-'));
const built = join(folder, 'page');
await build({ logLevel: 'error', build: { outDir: built, emptyOutDir: true } });
const server = new PageServer(built);
await server.start();
const executablePath = chromiumPath();
const browser = await chromium.launch({
  args: launchArgs,
  ...(executablePath && { executablePath }),
});

const attacks: Readonly<Record<string, () => Promise<Attacked>>> = {
  windows: () => windowsAttack(browser, server, seeds(20, 1), short ? 15 : 60),
  kills: () => killsAttack(server, seeds(60, 3)),
  records: () => recordsAttack(browser, server, seeds(300, 20)),
  conditions: () => conditionsAttack(browser, server),
  offline: () => offlineAttack(browser, server, seeds(24, 4)),
};
const came: Attacked[] = [];
for (const [name, attack] of Object.entries(attacks)) {
  if (values.only && values.only !== name) continue;
  console.log(`── ${name}`);
  came.push(await attack());
}
await browser.close();
await server.stop();
rmSync(folder, { recursive: true });
if (values.out) writeFileSync(values.out, JSON.stringify(came));
for (const { attack, tried, broken, figures } of came) {
  console.log(`${attack}: ${tried} tried, ${broken.length} broken. ${figures}.`);
}
process.exitCode = came.some(({ broken }) => broken.length > 0) ? 1 : 0;
