import { mkdirSync, writeFileSync } from 'node:fs';
import type { Browser } from '@playwright/test';
import { act } from './acts';
import { add } from './actsOnLog';
import { asWritten } from './asWritten';
import { heldAgainst } from './afterwards';
import type { Attacked } from './attacked';
import { Chance } from './chance';
import { DeskWindow } from './deskWindow';
import { keptThere } from './keptThere';
import { shownIn } from './onPage';
import { Oracle } from './oracle';
import type { PageServer } from './server';

const WINDOWS = 5;

/** Five windows on the same tanks, at once, for so many seconds. */
async function atOnce(browser: Browser, address: string, seed: number, seconds: number) {
  const context = await browser.newContext({ acceptDownloads: true });
  await asWritten(context);
  const oracle = new Oracle();
  const windows: DeskWindow[] = [];
  let acts = 0;
  try {
    for (let who = 0; who < WINDOWS; who++) {
      const page = await context.newPage();
      const one = new DeskWindow(page, new Chance(seed * 100 + who), oracle, who, seed);
      windows.push(one);
      await page.goto(`${address}/#log`);
      await page.locator('#new-alkalinityDkh').waitFor();
      await page.waitForTimeout(500);
      // The first is a keeper's: from then on there is something to be lost.
      if (who === 0) await add(one);
      await page.evaluate(() => ((globalThis as { hasOpened?: string }).hasOpened ??= 'tank-1'));
    }
    const until = Date.now() + seconds * 1000;
    const work = async (one: DeskWindow) => {
      while (Date.now() < until) {
        acts++;
        await act(one).catch((error: Error) => {
          oracle.fail(`window ${windows.indexOf(one)}: ${error.message.split('\n')[0]}`);
          return one.page.waitForTimeout(300);
        });
      }
    };
    await Promise.all(windows.map(work));
    await windows[0]!.page.waitForTimeout(3000);
    for (const [who, one] of windows.entries()) {
      await one.goTo('log');
      const { tank, names } = await shownIn(one.page);
      const saved = JSON.stringify((await keptThere(one.page)).tanks[tank]?.log.readings ?? []);
      const lacking = names.filter((name) => !saved.includes(name));
      if (lacking.length > 0)
        oracle.fail(`window ${who} shows ${lacking.join()} in ${tank}, which are not kept`);
      const hidden = [...new Set(saved.match(/\bn\d+_\d+_\d+\b/g) ?? [])].filter(
        (name) => !names.includes(name),
      );
      if (hidden.length > 0) oracle.fail(`window ${who} does not show ${hidden.join()} of ${tank}`);
      await one.watch.look();
    }
    const last = await context.newPage();
    await last.goto(`${address}/#log`);
    await last.locator('#new-alkalinityDkh').waitFor();
    await last.waitForTimeout(700);
    await heldAgainst(last, oracle);
    const tanks = Object.values((await keptThere(last)).tanks);
    const asides = tanks.filter(({ name }) => /other window|anderes Fenster/.test(name)).length;
    for (const { tank, why } of (await keptThere(last)).aside) {
      oracle.note(-1, `put aside: ${tank}: ${why.join(' ')}`);
    }
    const notices = windows.flatMap(({ watch }) => [...watch.notices]);
    if (asides > 0 && notices.length === 0) oracle.fail('plans were put aside and nobody was told');
    const [readings, contested] = [oracle.must.size, oracle.contested.size];
    return { oracle, acts, asides, notices, readings, contested };
  } finally {
    await context.close();
  }
}

export async function windowsAttack(
  browser: Browser,
  server: PageServer,
  seeds: readonly number[],
  seconds: number,
): Promise<Attacked> {
  const broken: string[] = [];
  let [acts, asides, readings, contested] = [0, 0, 0, 0];
  for (const seed of seeds) {
    // Three of four without the engine: what is written comes much thicker then.
    server.isMute = seed % 4 !== 0;
    const came = await atOnce(browser, server.address, seed, seconds);
    acts += came.acts;
    asides += came.asides;
    readings += came.readings;
    contested += came.contested;
    broken.push(...came.oracle.broken.map((what) => `seed ${seed}: ${what}`));
    console.log(
      `   windows, seed ${seed}: ${came.acts} acts, ${came.readings} readings held, ${came.asides} set aside, ${came.oracle.broken.length} broken`,
    );
    for (const what of came.oracle.broken) console.log(`      ${what}`);
    for (const notice of new Set(came.notices)) console.log(`      said: ${notice}`);
    if (came.oracle.broken.length === 0) continue;
    mkdirSync('.proof/storage', { recursive: true });
    writeFileSync(`.proof/storage/windows ${seed}.txt`, `${came.oracle.journal.join('\n')}\n`);
  }
  return {
    attack: `five windows on the same tanks at once, ${seconds} s`,
    tried: seeds.length,
    broken,
    figures: `${acts} acts; ${readings} readings that nobody took back, ${contested} texts that two windows changed at once and one took back (not judged); ${asides} times plans of two windows clashed and one was kept as a tank of its own`,
  };
}
