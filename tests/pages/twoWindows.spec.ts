import { expect, test, type Page } from '@playwright/test';

const use = (page: Page) => page.getByLabel('Alkalinity use', { exact: true });

async function open(page: Page, hash = '') {
  await page.goto(`/${hash}`);
  if (hash === '') await expect(page.locator('.headline')).toContainText('dKH');
}

async function addReading(page: Page, dkh: string) {
  await page.getByLabel('Alkalinity', { exact: true }).fill(dkh);
  await page.getByRole('button', { name: 'Add to the log' }).click();
}

test('what one window changes, the other shows, and neither loses anything', async ({
  context,
}) => {
  const [bench, log] = [await context.newPage(), await context.newPage()];
  await open(bench);
  await open(log, '#log');
  await use(bench).fill('2');
  await use(bench).press('Enter');
  await addReading(log, '8.4');
  await expect(log.getByRole('cell', { name: /8\.4/ })).toBeVisible();
  await bench.goto('/#log');
  await expect(bench.getByRole('cell', { name: /8\.4/ })).toBeVisible();
  await log.goto('/#bench');
  await expect(use(log)).toHaveValue('2.00');
  await bench.reload();
  await expect(bench.getByRole('cell', { name: /8\.4/ })).toBeVisible();
  await bench.goto('/#bench');
  await expect(use(bench)).toHaveValue('2.00');
});

test('a line that is being edited stays under the fingers, whatever the other window saves', async ({
  context,
}) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  await open(one, '#log');
  await addReading(one, '8.4');
  await open(two, '#log');
  await two.getByRole('button', { name: /^Edit / }).click();
  const edited = two.locator('#edit-alkalinityDkh');
  await edited.fill('8.6');
  await addReading(one, '9.9');
  await expect(two.getByRole('cell', { name: '9.90' })).toBeVisible();
  await expect(edited).toHaveValue('8.6');
  await expect(edited).toBeFocused();
  await one
    .getByRole('button', { name: /^Delete / })
    .last()
    .click();
  await expect(two.getByRole('cell', { name: '8.40' })).toHaveCount(0);
  await expect(edited).toHaveValue('8.6');
  await edited.press('Enter');
  await expect(one.getByRole('cell', { name: '8.60' })).toBeVisible();
});

test('plans that both windows change in the same breath are both kept', async ({ context }) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  await open(one);
  await open(two);
  await use(one).fill('1.7');
  await use(two).fill('2.3');
  await Promise.all([use(one).press('Enter'), use(two).press('Enter')]);
  await one.waitForTimeout(1500);
  const third = await context.newPage();
  await open(third, '#log');
  const options = third.getByLabel('Tank', { exact: true }).locator('option');
  await expect(options).toHaveCount(2);
  const tanks = await options.allTextContents();
  const found = new Set<string>();
  for (const name of tanks) {
    await third.goto('/#log');
    await third.getByLabel('Tank', { exact: true }).selectOption({ label: name });
    await third.goto('/#bench');
    await expect(use(third)).not.toHaveValue('');
    found.add(await use(third).inputValue());
  }
  expect([...found].sort()).toEqual(['1.70', '2.30']);
});

test('a browser killed during a save opens the last or the one before, never a broken one', async ({
  context,
}) => {
  let page = await context.newPage();
  await open(page);
  for (const value of ['1.5', '2.5', '3.5']) {
    await use(page).fill(value);
    await use(page).press('Enter');
    await page.waitForTimeout(260);
    const crash = context.newCDPSession(page).then((session) => session.send('Page.crash'));
    await Promise.race([crash.catch(() => {}), page.waitForEvent('crash')]);
    await page.close();
    page = await context.newPage();
    await open(page);
    expect(['1.10', '1.50', '2.50', '3.50']).toContain(await use(page).inputValue());
    await expect(page.locator('.notice')).toHaveCount(0);
  }
});

test('a browser that refuses to keep anything says so, and everything still works', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await open(page);
  await expect(page.locator('.notice')).toContainText('as files instead');
  await use(page).fill('2');
  await use(page).press('Enter');
  await expect(page.locator('.headline')).toContainText('falls below');
});
