import type { Page } from '@playwright/test';
import type { Tank } from '../../../src/store/tanks';
import { keptThere } from './keptThere';
import type { Oracle } from './oracle';

/** Everything as the page itself saves it into a file. */
export async function exported(page: Page): Promise<readonly Tank[]> {
  const text = await page.evaluate(async () => {
    const here = globalThis as { lastSaved?: Blob };
    delete here.lastSaved;
    document
      .querySelector<HTMLButtonElement>('section[aria-labelledby=everything-title] button')!
      .click();
    return (here.lastSaved as Blob | undefined)?.text();
  });
  return (JSON.parse(text!) as { tanks: Tank[] }).tanks;
}

const namesIn = (text: string): Set<string> => new Set(text.match(/\bn\d+_\d+_\d+\b/g) ?? []);
const readingsOf = (tanks: readonly Tank[]) =>
  namesIn(JSON.stringify(tanks.map(({ log }) => log.readings)));

/** Holds what was shown as saved against what is kept, and can be taken out, afterwards. */
export async function heldAgainst(page: Page, oracle: Oracle): Promise<void> {
  const there = await keptThere(page);
  const kept = readingsOf(Object.values(there.tanks));
  const out = readingsOf(await exported(page));
  const aside = namesIn(there.aside.map(({ text }) => text).join());
  for (const name of oracle.must.keys()) {
    if (!kept.has(name) && !aside.has(name)) oracle.fail(`${name} is lost`);
    else if (!out.has(name) && !aside.has(name))
      oracle.fail(`${name} is kept and not saved into a file`);
  }
  for (const name of oracle.gone)
    if (kept.has(name)) oracle.fail(`${name} was deleted and is there again`);
  const all = JSON.stringify(there);
  for (const [lever, value] of oracle.turns) {
    if (!all.includes(String(Number(value))))
      oracle.fail(`${lever} was turned to ${value}, which is lost`);
  }
}
