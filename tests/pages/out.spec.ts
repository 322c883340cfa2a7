import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';

async function saved(page: Page, click: () => Promise<void>): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download'), click()]);
  return readFileSync(await file.path());
}

test.beforeEach(async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('after 60 days');
});

test('a chart goes out as SVG and PNG, with title, unit and assumptions in it', async ({
  page,
}) => {
  // As long as both are the same they are one line.
  const asOne = page.getByText(/^Today.s plan = Trial A/);
  await expect(asOne.first()).toBeVisible();
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await expect(asOne).toHaveCount(0);
  await page.getByLabel('Name', { exact: true }).fill('<b>&"trial"');
  await page.getByLabel('Name', { exact: true }).press('Enter');
  const chart = page.locator('figure').filter({ hasText: 'Alkalinity' }).first();
  await chart.getByText('Save', { exact: false }).first().click();
  const svg = await saved(page, () => chart.getByRole('button', { name: 'SVG' }).click());
  const read = await page.evaluate((text) => {
    const doc = new DOMParser().parseFromString(text, 'image/svg+xml');
    const words = [...doc.querySelectorAll('text')].map(({ textContent }) => textContent);
    return {
      broken: !!doc.querySelector('parsererror'),
      words,
      paths: doc.querySelectorAll('path').length,
    };
  }, svg.toString());
  expect(read.broken).toBe(false);
  // Two lines, each in the ribbon of its days.
  expect(read.paths).toBe(4);
  expect(read.words).toContain('Alkalinity, dKH');
  expect(read.words).toContain('<b>&"trial"');
  expect(read.words.join('\n')).toMatch(/Today's plan: 300 L, S 35, 25\.5 °C; use 1\.1 dKH/);
  expect(read.words.join('\n')).toContain('Lueker et al. 2000');
  const png = await saved(page, () => chart.getByRole('button', { name: 'PNG' }).click());
  // PNG specification, 5.2 and 11.2.2: signature, then IHDR with width and height.
  expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
  expect(png.readUInt32BE(16)).toBe(1920);
  expect(png.length).toBeGreaterThan(20_000);
});

test('ledger, differences and hours go out as CSV', async ({ page }) => {
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await page.getByText('The same as a table').click();
  await page.getByText(/the day at the time cursor/).click();
  const buttons = page.getByRole('button', { name: 'CSV of this table' });
  await expect(buttons).toHaveCount(3);
  const texts = [];
  for (let i = 0; i < 3; i++) {
    texts.push((await saved(page, () => buttons.nth(i).click())).toString());
  }
  expect(texts[0]).toMatch(
    /^from or to,dKH of the start volume\r\nat the start of the day,8\.500\r\n/,
  );
  expect(texts[0]).toMatch(/\r\ncoral growth,-1\.\d{3}\r\n/);
  expect(texts[1]).toMatch(/Top-off: Strength of the mix,0\.9 g\/L,1\.2 g\/L\r\n/);
  expect(texts[2]!.trim().split('\r\n').length).toBeGreaterThanOrEqual(26);
});
