import type { Browser, BrowserContext, CDPSession, Page } from '@playwright/test';
import { SCENARIO_VERSION } from '../../../shared/scenario/schema';
import { exported } from './afterwards';
import { add } from './actsOnLog';
import { reload } from './actsOnPage';
import { asWritten } from './asWritten';
import type { Attacked } from './attacked';
import { Chance } from './chance';
import { DeskWindow } from './deskWindow';
import { keptThere } from './keptThere';
import { leave } from './leftThere';
import { pressed, shownIn } from './onPage';
import { Oracle } from './oracle';
import { emptyStores, newestTank } from './releasesLeft';
import type { PageServer } from './server';

const NOW = SCENARIO_VERSION + 1;

interface Desk {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly one: DeskWindow;
  readonly oracle: Oracle;
  readonly address: string;
  open(): Promise<void>;
}

const kept = async ({ page }: Desk) => JSON.stringify(await keptThere(page));
const takenOut = async ({ page }: Desk) => JSON.stringify(await exported(page));
const said = async (desk: Desk): Promise<string> => {
  await desk.one.watch.look();
  return [...desk.one.watch.notices].join(' ');
};
const lastOf = ({ oracle }: Desk) => [...oracle.must.keys()].at(-1)!;
const isTrue = (fact: boolean, otherwise: string) => {
  if (!fact) throw new Error(otherwise);
};

/** Trap: a browser remembers for half a minute how much room there was, so it is taken before the page opens. */
async function full(desk: Desk): Promise<CDPSession> {
  const { context, page, address } = desk;
  await page.goto(`${address}/icon.svg`);
  await leave(page, {
    version: NOW,
    stores: { ...emptyStores(NOW), tanks: { 'tank-1': newestTank() } },
  });
  const session = await context.newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin: address, quotaSize: 1 });
  await page.waitForTimeout(31_000);
  await desk.open();
  await add(desk.one);
  await page.waitForTimeout(1500);
  const isKept = (await kept(desk)).includes(`"${lastOf(desk)}"`);
  isTrue(!isKept, 'the quota did not bite: nothing was tried');
  isTrue((await said(desk)) !== '', 'nothing was kept, and nothing said');
  isTrue(
    (await takenOut(desk)).includes(`"${lastOf(desk)}"`),
    'what could not be kept cannot be taken out',
  );
  return session;
}

async function quota(desk: Desk): Promise<void> {
  const session = await full(desk);
  await session.send('Storage.overrideQuotaForOrigin', { origin: desk.address });
  await desk.page.waitForTimeout(12_000);
  isTrue((await kept(desk)).includes(`"${lastOf(desk)}"`), 'with room again it is not kept');
  isTrue(
    (await desk.page.locator('p.notice').count()) === 0,
    'it is kept, and the page still says that it is not',
  );
}

async function quotaAndClosed(desk: Desk): Promise<void> {
  const session = await full(desk);
  await session.send('Storage.overrideQuotaForOrigin', { origin: desk.address });
  await reload(desk.one);
  await desk.page.waitForTimeout(800);
  const { names } = await shownIn(desk.page);
  isTrue(names.includes(lastOf(desk)), 'what a full disk did not take was lost as the page closed');
}

async function denied(desk: Desk): Promise<void> {
  await desk.context.addInitScript(`
    const deny = () => { throw new DOMException('The operation is insecure.', 'SecurityError'); };
    for (const name of ['indexedDB', 'localStorage', 'sessionStorage', 'caches']) {
      Object.defineProperty(window, name, { get: deny });
    }
    navigator.serviceWorker.register = () => Promise.reject(new DOMException('no', 'SecurityError'));`);
  await desk.open();
  isTrue((await said(desk)) !== '', 'nothing is kept, and nothing said');
  await add(desk.one);
  isTrue((await takenOut(desk)).includes(lastOf(desk)), 'what is not kept cannot be taken out');
}

async function clockSetBack(desk: Desk): Promise<void> {
  const { page, one } = desk;
  await page.clock.setFixedTime('2026-11-20T18:00');
  await desk.open();
  for (let i = 0; i < 3; i++) await add(one);
  await page.clock.setFixedTime('2019-01-01T00:00');
  for (let i = 0; i < 3; i++) await add(one);
  await pressed(page, '.tank .bar button:nth-of-type(2)');
  await page.fill('#tank-name', 'A tank of before');
  await page.press('#tank-name', 'Enter');
  await add(one);
  await page.waitForTimeout(800);
  await reload(one);
  const text = await kept(desk);
  for (const name of desk.oracle.must.keys()) isTrue(text.includes(`"${name}"`), `${name} is lost`);
}

async function newer(desk: Desk): Promise<void> {
  const { page, address } = desk;
  await page.goto(`${address}/icon.svg`);
  const tank = { ...newestTank(), ofTomorrow: { a: 1 } };
  await leave(page, {
    version: NOW + 3,
    stores: { ...emptyStores(NOW), tanks: { 'tank-1': tank } },
  });
  const before = JSON.stringify((await keptThere(page)).tanks);
  await desk.open();
  isTrue((await said(desk)) !== '', 'a newer version’s tanks are not opened, and nothing is said');
  await add(desk.one);
  await page.waitForTimeout(800);
  isTrue((await takenOut(desk)).includes(lastOf(desk)), 'what is not kept cannot be taken out');
  await reload(desk.one);
  isTrue(
    JSON.stringify((await keptThere(page)).tanks) === before,
    'a newer version’s tanks were changed',
  );
}

async function newerMeanwhile(desk: Desk): Promise<void> {
  const { page, one } = desk;
  await desk.open();
  await add(one);
  await page.waitForTimeout(800);
  await page.evaluate(async (version) => {
    const opening = indexedDB.open('paper-reef', version);
    await new Promise((done) => (opening.onsuccess = done));
    opening.result.close();
  }, NOW + 3);
  const before = JSON.stringify((await keptThere(page)).tanks);
  await add(one);
  await page.waitForTimeout(800);
  isTrue((await said(desk)) !== '', 'a newer version has taken over, and nothing is said');
  isTrue((await takenOut(desk)).includes(lastOf(desk)), 'what is not kept cannot be taken out');
  await reload(one);
  const { tanks, beside } = await keptThere(page);
  isTrue(JSON.stringify(tanks) === before, 'a newer version’s tanks were changed');
  isTrue(
    JSON.stringify(beside).includes(lastOf(desk)),
    'what was typed into the old window is left nowhere',
  );
}

const lacking = (store: string) => async (desk: Desk) => {
  const { page, address } = desk;
  await page.goto(`${address}/icon.svg`);
  const all = { ...emptyStores(NOW), tanks: { 'tank-1': newestTank() }, aside: {} };
  const others = Object.fromEntries(Object.entries(all).filter(([name]) => name !== store));
  await leave(page, { version: NOW, stores: others });
  await desk.open();
  const isOpen = (await shownIn(page)).tank === 'tank-1' && (await takenOut(desk)).includes('"B7"');
  isTrue(
    store === 'tanks' || isOpen || (await said(desk)) !== '',
    'tanks are not opened, and nothing is said',
  );
  await add(desk.one);
  await page.waitForTimeout(800);
  const isKept = (await kept(desk)).includes(lastOf(desk));
  isTrue(isKept || (await said(desk)) !== '', 'nothing is kept, and nothing said');
  isTrue((await takenOut(desk)).includes(lastOf(desk)), 'what is typed cannot be taken out');
};

async function deletedMeanwhile(desk: Desk): Promise<void> {
  const { page, one } = desk;
  await desk.open();
  await add(one);
  await page.waitForTimeout(800);
  await page.evaluate(() => {
    localStorage.clear();
    return new Promise((done) => (indexedDB.deleteDatabase('paper-reef').onsuccess = done));
  });
  await add(one);
  await page.waitForTimeout(800);
  await reload(one);
  const text = await kept(desk);
  for (const name of desk.oracle.must.keys()) isTrue(text.includes(`"${name}"`), `${name} is lost`);
}

const trials: Readonly<Record<string, (desk: Desk) => Promise<void>>> = {
  'the quota used up, and room again': quota,
  'the quota used up, and the page closed': quotaAndClosed,
  'storage denied': denied,
  'the clock set back seven years': clockSetBack,
  'a newer version’s database': newer,
  'a newer version that takes over an open page’s database': newerMeanwhile,
  'no store of tanks': lacking('tanks'),
  'no store for what is put aside': lacking('aside'),
  'no store of the first version': lacking('bench'),
  'all deleted under an open page': deletedMeanwhile,
};

/** A browser that is full, refuses, is set back, or belongs to a newer version by now. */
export async function conditionsAttack(browser: Browser, server: PageServer): Promise<Attacked> {
  server.isMute = true;
  const broken: string[] = [];
  let seed = 9000;
  for (const [name, trial] of Object.entries(trials)) {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    await asWritten(context);
    const page = await context.newPage();
    const oracle = new Oracle();
    const one = new DeskWindow(page, new Chance(++seed), oracle, 0, seed);
    const open = async () => {
      await page.goto(`${server.address}/#log`);
      await page.locator('#new-alkalinityDkh').waitFor();
      await page.waitForTimeout(700);
    };
    try {
      await trial({ page, context, one, oracle, open, address: server.address });
    } catch (error) {
      broken.push(`${name}: ${(error as Error).message.split('\n')[0]}`);
    }
    await one.watch.look();
    broken.push(...[...one.watch.faults(), ...oracle.broken].map((fault) => `${name}: ${fault}`));
    await context.close();
  }
  for (const what of broken) console.log(`   ${what}`);
  return {
    attack: 'quota, denial, clock, a newer version, deleted stores',
    tried: Object.keys(trials).length,
    broken,
    figures: Object.keys(trials).join('; '),
  };
}
