import type { Browser, Page } from '@playwright/test';
import { add } from './actsOnLog';
import { reload } from './actsOnPage';
import { asWritten } from './asWritten';
import type { Attacked } from './attacked';
import { Chance } from './chance';
import { DeskWindow } from './deskWindow';
import { shownIn } from './onPage';
import { Oracle } from './oracle';
import type { PageServer } from './server';

const PAGES = ['bench', 'log', 'drills', 'lessons', 'words', 'display', 'tanks'] as const;

const ready = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (!navigator.serviceWorker.controller) await new Promise((r) => setTimeout(r, 50));
  });

/** Takes files out of the worker's cache, each as likely as not; the page itself only when asked. */
const loseHalf = (page: Page, draws: readonly number[]) =>
  page.evaluate(async (lots) => {
    const cache = await caches.open((await caches.keys())[0]!);
    const kept = await cache.keys();
    for (const [i, request] of kept.entries())
      if (lots[i % lots.length]! < 50) await cache.delete(request);
  }, draws);

/** Opens every page; one that cannot be fetched says so. */
async function walked(page: Page, one: DeskWindow): Promise<number> {
  let unfetched = 0;
  for (const hash of PAGES) {
    await page.evaluate((to) => (location.hash = to), hash);
    await page.waitForTimeout(500);
    unfetched += await page.locator('main [role=alert]').count();
    await one.watch.look();
  }
  return unfetched;
}

export async function offlineAttack(
  browser: Browser,
  server: PageServer,
  seeds: readonly number[],
): Promise<Attacked> {
  server.isMute = false;
  const broken: string[] = [];
  let [unfetched, unopened] = [0, 0];
  for (const seed of seeds) {
    const chance = new Chance(seed);
    const context = await browser.newContext();
    await asWritten(context);
    const page = await context.newPage();
    const oracle = new Oracle();
    const one = new DeskWindow(page, chance, oracle, 0, seed);
    const fail = (what: string) => broken.push(`seed ${seed}: ${what}`);
    try {
      await page.goto(`${server.address}/#log`);
      await page.locator('#new-alkalinityDkh').waitFor();
      await ready(page);
      await page.waitForTimeout(500);
      await add(one);
      await page.waitForTimeout(600);
      const isUpdate = seed % 2 === 0;
      if (isUpdate) {
        // A newer build comes while the page is open; another window takes it over.
        server.serve(`b${seed}`);
        await page.evaluate(
          async () => void (await (await navigator.serviceWorker.ready).update()),
        );
        const isWaiting = () =>
          page.evaluate(async () => !!(await navigator.serviceWorker.ready).waiting);
        for (let i = 0; i < 200 && !(await isWaiting()); i++) await page.waitForTimeout(100);
        const isTaken = chance.percent(60);
        if (isTaken) {
          await page.evaluate(async () =>
            (await navigator.serviceWorker.ready).waiting!.postMessage('take over'),
          );
          await page.waitForTimeout(800);
          one.watch.isOffline = true;
        }
        unfetched += await walked(page, one);
        await page.evaluate(() => (location.hash = 'log'));
        await add(one);
        await page.waitForTimeout(600);
        if ((await page.locator('[role=status] button').count()) === 0)
          fail('a newer page is not offered');
        if (isTaken) {
          await page.locator('[role=status] button').first().click();
          await page.waitForTimeout(2500);
        } else await reload(one);
        await page.locator('#new-alkalinityDkh').waitFor();
        await page.waitForTimeout(800);
      } else {
        await loseHalf(
          page,
          Array.from({ length: 400 }, () => chance.int(0, 99)),
        );
        one.watch.isOffline = true;
        const isDark = chance.percent(70);
        if (isDark) await server.stop();
        const opens = await page.reload({ timeout: 20_000 }).then(
          () =>
            page
              .locator('header h1')
              .waitFor({ timeout: 5_000 })
              .then(
                () => true,
                () => false,
              ),
          () => false,
        );
        if (opens) unfetched += await walked(page, one);
        else unopened++;
        if (!opens && !isDark) fail('with a network and half its files the page does not open');
        if (isDark) await server.start();
        await page.waitForTimeout(1000);
        await page.goto('about:blank');
        await page.goto(`${server.address}/#log`);
        await page.locator('#new-alkalinityDkh').waitFor({ timeout: 20_000 });
        await page.waitForTimeout(800);
        await walked(page, one);
        await page.waitForTimeout(3000);
        // What was missing has been fetched: it is whole again without a network.
        await server.stop();
        await page
          .reload({ timeout: 20_000 })
          .catch(() =>
            fail('it does not open without a network, though it was open with one since'),
          );
        if ((await walked(page, one)) > 0)
          fail('a page cannot be fetched, though it was since its file was lost');
        await server.start();
        await page.evaluate(() => (location.hash = 'log'));
        await page.waitForTimeout(500);
      }
      const { names } = await shownIn(page);
      for (const name of oracle.must.keys()) if (!names.includes(name)) fail(`${name} is lost`);
    } catch (error) {
      fail((error as Error).message.split('\n')[0]!);
      await server.start().catch(() => {});
    }
    for (const fault of [...one.watch.faults(), ...oracle.broken]) fail(fault);
    server.serve('');
    await context.close();
  }
  for (const what of broken) console.log(`   ${what}`);
  return {
    attack: 'the offline worker with half its files gone, or a newer build while a page is open',
    tried: seeds.length,
    broken,
    figures: `${unfetched} pages that could not be fetched said so; ${unopened} times the page itself was lost with no network`,
  };
}
