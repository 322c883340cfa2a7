import type { DeskWindow } from './deskWindow';

export async function display(desk: DeskWindow): Promise<void> {
  await desk.goTo('display');
  if (desk.chance.percent(50)) {
    await desk.page.selectOption('#show-alkalinity', { index: desk.chance.int(0, 2) });
    return;
  }
  const loaded = desk.page.waitForEvent('load', { timeout: 20_000 });
  const language = desk.chance.pick(['en', 'de', 'browser']);
  if ((await desk.page.inputValue('#show-language')) === language)
    return void loaded.catch(() => {});
  await desk.page.selectOption('#show-language', language);
  await loaded;
  desk.note(`language ${language}`);
  await desk.reopened();
}

export async function reload(desk: DeskWindow): Promise<void> {
  await desk.page.reload({ waitUntil: 'load' });
  desk.note('reloaded');
  await desk.reopened();
}

export async function back(desk: DeskWindow): Promise<void> {
  const hash = () => new URL(desk.page.url()).hash;
  if (!(await desk.page.evaluate(() => history.length > 3))) return;
  await desk.page.evaluate(() => history.back());
  await desk.page.waitForTimeout(100);
  desk.note(`back to ${hash()}`);
}
