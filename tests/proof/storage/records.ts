import type { Browser, Page } from '@playwright/test';
import type { Tank } from '../../../src/store/tanks';
import { SCENARIO_VERSION } from '../../../shared/scenario/schema';
import { exported } from './afterwards';
import { asWritten } from './asWritten';
import type { Attacked } from './attacked';
import { Chance } from './chance';
import { keptThere, type KeptThere } from './keptThere';
import { leave, type LeftThere } from './leftThere';
import { at, mutant, placesIn } from './mutant';
import { emptyStores, newestTank, releasesLeft } from './releasesLeft';
import type { PageServer } from './server';
import { Watch } from './watch';

const NOW = SCENARIO_VERSION + 1;
/** What is no keeper's word: which plan is shown, in which ink, by which save. */
const NO_WORD = /(^|\.)(selected|ink|edition|untouched|id)$/;

/** What of a record is neither in the tank as it is kept now nor put aside as it was. */
function missing(record: unknown, whole: unknown, there: KeptThere): string | undefined {
  const text = JSON.stringify(record, null, 1);
  if (there.aside.some((one) => one.text === text)) return undefined;
  const [tank] = Object.values(there.tanks);
  const isLeaf = (value: unknown) => typeof value !== 'object' || value === null;
  for (const place of placesIn(record)) {
    const [was, original] = [at(record, place), at(whole, place)];
    if (!isLeaf(was) || was === undefined || original === undefined) continue;
    if (NO_WORD.test(place.join('.'))) continue;
    if (!Object.is(at(tank, place), was)) return `${place.join('.')}: ${String(was).slice(0, 40)}`;
  }
  return undefined;
}

/** Opens the page on what was left, and looks at all pages that show it. */
async function openedOn(page: Page, watch: Watch, address: string, left: LeftThere): Promise<void> {
  await page.goto(`${address}/icon.svg`);
  await leave(page, left);
  await page.goto(`${address}/#log`);
  await page.locator('#new-alkalinityDkh').waitFor();
  await page.waitForTimeout(250);
  for (const hash of ['bench', 'display', 'log']) {
    await page.evaluate((to) => (location.hash = to), hash);
    await page.locator('main h1, main h2').first().waitFor();
    await page.waitForTimeout(60);
    await watch.look();
  }
}

export async function recordsAttack(
  browser: Browser,
  server: PageServer,
  seeds: readonly number[],
): Promise<Attacked> {
  server.isMute = true;
  const broken: string[] = [];
  let aside = 0;
  const whole = newestTank();
  const context = await browser.newContext({ serviceWorkers: 'block' });
  await asWritten(context);
  const page = await context.newPage();
  const watch = new Watch(page);

  const tryOn = async (
    name: string,
    left: LeftThere,
    check: (there: KeptThere, out: readonly Tank[]) => string | undefined,
  ) => {
    try {
      watch.notices.clear();
      await openedOn(page, watch, server.address, left);
      const there = await keptThere(page);
      const tanks = await exported(page);
      const lost = check(there, tanks);
      if (lost) broken.push(`${name}: lost without a word: ${lost}`);
      if (there.aside.length > 0) aside++;
      if (there.aside.length > 0 && watch.notices.size === 0)
        broken.push(`${name}: put aside and not said`);
      const names = new Set(tanks.map((tank) => tank.name));
      const unsaved = Object.values(there.tanks).filter((tank) => !names.has(tank.name));
      if (unsaved.length > 0) broken.push(`${name}: kept and not saved into a file`);
    } catch (error) {
      broken.push(`${name}: ${(error as Error).message.split('\n')[0]}`);
    }
    broken.push(...watch.faults().map((fault) => `${name}: ${fault}`));
  };

  const releases = releasesLeft();
  for (const [name, record, left] of releases) {
    await tryOn(name, left, (there, [tank]) => {
      const readings = (record as { log?: { readings: unknown[] } }).log?.readings ?? [];
      if (there.aside.length > 0) return 'put aside, though it was whole';
      return tank?.log.readings.length === readings.length ? undefined : 'readings';
    });
  }
  for (const seed of seeds) {
    const chance = new Chance(seed);
    const [record, said] = mutant(whole, chance);
    const inDatabase = chance.percent(80);
    const left = JSON.stringify({ tank: record, base: whole });
    const cut = chance.percent(40) ? left.slice(0, chance.int(0, left.length)) : left;
    const other = { ...whole, id: 'tank-2', name: 'Raceway at Sallow Creek' };
    await tryOn(
      `seed ${seed} (${said})`,
      inDatabase
        ? {
            version: NOW,
            stores: { ...emptyStores(NOW), tanks: { 'tank-1': record, 'tank-2': other } },
          }
        : {
            ...{ version: NOW, stores: { ...emptyStores(NOW), tanks: { 'tank-1': whole } } },
            beside: { 'paper-reef unsaved w tank-1': cut },
          },
      (there) => {
        if (inDatabase)
          return there.tanks['tank-2'] ? missing(record, whole, there) : 'the tank beside it';
        if (Object.keys(there.beside).some((key) => key.includes('unsaved')))
          return 'still left by the closed page';
        const isRead = cut === left || there.aside.some(({ text }) => text === cut);
        return isRead ? undefined : 'what a closing page had left';
      },
    );
  }
  await context.close();
  for (const what of broken) console.log(`   ${what}`);
  return {
    attack: 'what every release has kept, and records spoilt in one to three places, or cut off',
    tried: releases.length + seeds.length,
    broken,
    figures: `${aside} put aside as they were, with a sentence`,
  };
}
