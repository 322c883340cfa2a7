import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from '@playwright/test';
import { act } from './acts';
import { add } from './actsOnLog';
import { asWritten } from './asWritten';
import { exported } from './afterwards';
import type { Attacked } from './attacked';
import { Chance } from './chance';
import { DeskWindow } from './deskWindow';
import { keptThere } from './keptThere';
import { Oracle } from './oracle';
import { OwnBrowser } from './ownBrowser';
import type { PageServer } from './server';
import { Watch } from './watch';

/** What was shown so long before a kill must be there afterwards, ms. */
const OWED_AFTER_MS = 500;

async function opened(context: BrowserContext, address: string) {
  await asWritten(context);
  const page = await context.newPage();
  const watch = new Watch(page);
  await page.goto(`${address}/#log`);
  await page.locator('#new-alkalinityDkh').waitFor({ timeout: 30_000 });
  await page.waitForTimeout(700);
  return { page, watch };
}

/** A browser that is killed at any moment of a keeper's edits, and begun again on what it left. */
export async function killsAttack(server: PageServer, seeds: readonly number[]): Promise<Attacked> {
  const profile = mkdtempSync(join(tmpdir(), 'paper-reef-profile-'));
  const broken: string[] = [];
  const youngest: number[] = [];
  let [shown, reopened] = [0, 0];
  // Its readings stay from one life of the browser to the next.
  const oracle = new Oracle();
  server.isMute = true;
  try {
    for (const seed of seeds) {
      const own = new OwnBrowser(profile);
      const chance = new Chance(seed);
      const { page } = await opened(await own.start(), server.address);
      const before = oracle.must.size;
      const one = new DeskWindow(page, chance, oracle, 0, seed);
      await add(one);
      const killAt = Date.now() + chance.int(0, 3000);
      let isOver = false;
      const working = (async () => {
        while (!isOver) {
          await (chance.percent(60) ? add(one) : act(one)).catch((error: Error) => {
            if (!isOver) oracle.fail(error.message.split('\n')[0]!);
            return new Promise((r) => setTimeout(r, 20));
          });
        }
      })();
      await new Promise((done) => setTimeout(done, Math.max(0, killAt - Date.now())));
      const killedAt = Date.now();
      isOver = true;
      await own.kill();
      await working;
      shown += oracle.must.size - before;

      const after = await opened(await own.start(), server.address);
      reopened++;
      await after.watch.look();
      for (const fault of after.watch.faults()) oracle.fail(fault);
      const there = JSON.stringify(await keptThere(after.page));
      const out = JSON.stringify(await exported(after.page).catch(() => []));
      for (const [name, at] of oracle.must) {
        const isThere = there.includes(`"${name}"`);
        if (isThere && out.includes(`"${name}"`)) continue;
        const age = killedAt - at;
        if (isThere) broken.push(`seed ${seed}: ${name} is kept and cannot be taken out`);
        else if (age >= OWED_AFTER_MS)
          broken.push(`seed ${seed}: ${name}, shown ${age} ms before the kill, is lost`);
        else youngest.push(age);
        oracle.must.delete(name);
      }
      broken.push(...oracle.broken.splice(0).map((what) => `seed ${seed}: ${what}`));
      await own.kill();
    }
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
  const lost =
    youngest.length === 0
      ? 'none'
      : `${youngest.length}, the oldest ${Math.max(...youngest)} ms after it was shown`;
  for (const what of broken) console.log(`   ${what}`);
  return {
    attack: 'the browser killed while a keeper edits, and begun again',
    tried: reopened,
    broken,
    figures: `${shown} readings shown; of those shown less than ${OWED_AFTER_MS} ms before a kill, lost: ${lost}`,
  };
}
