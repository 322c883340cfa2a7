import { expect, test, type Page } from '@playwright/test';
import { axeFindsNothing, looks } from './axe';
import { enterTests, tankInTheLog } from './logged';

const SHOTS = process.env.SHOTS;
const TESTS = ['8.4', '8.3', '8.4', '8.2', '8.3', '8.2'];

/** A tank on limewater, and tests that show it nearly steady. */
async function limewaterTank(page: Page) {
  await tankInTheLog(page, 'limewater in the top-off');
  await enterTests(page, TESTS);
}

/** The page at each width and in each theme: nothing wider than it, nothing that axe finds. */
async function looksRight(page: Page, name: string) {
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await axeFindsNothing(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    if (!SHOTS) continue;
    await page
      .locator('details.away, article.wall-sheet')
      .screenshot({ path: `${SHOTS}/${name}-${width}-${colorScheme}.png` });
  }
}

test('days away, and the sitter’s sheet', async ({ page }) => {
  test.setTimeout(120_000);
  await limewaterTank(page);
  const away = page.locator('details.away');
  await away.locator('summary').first().click();
  const days = away.getByLabel('Away for, days');
  await days.fill('many');
  await days.press('Enter');
  await expect(away.getByRole('alert')).toBeVisible();
  await days.fill('9');
  await away.getByLabel('Somebody comes every, days').fill('3');
  await away.getByRole('button', { name: 'Leave it alone' }).click();
  await expect(away.locator('.headline')).toContainText(/9 days/, { timeout: 30_000 });
  await expect(away).toContainText(/Worst while nobody looks: .+ in the first night/, {
    timeout: 30_000,
  });
  await expect(away.locator('table')).toContainText('top-off reservoir');
  for (const fold of await away.locator('details summary').all()) await fold.click();
  await looksRight(page, 'away');
  await away.getByRole('link', { name: 'The sitter’s sheet' }).click();
  const sheet = page.getByRole('article', { name: 'The sitter’s sheet' });
  await expect(sheet).toContainText(/no more than [\d.]+ L/, { timeout: 60_000 });
  await expect(sheet).toContainText('Unplug the top-off with dry hands.');
  await expect(sheet).toContainText('People first.');
  await looksRight(page, 'sitter');
});

test('an address with no such days says what it expects', async ({ page }) => {
  await page.goto('/#sitter/none');
  await expect(page.getByRole('alert')).toContainText('expected whole days from 1 to 60');
});
