import { expect, test } from '@playwright/test';
import { looksRight } from './axe';
import { enterTests, tankInTheLog } from './logged';

test('two tanks at a glance: the one that is outside stands first, and a press opens its log', async ({
  page,
}) => {
  await tankInTheLog(page, 'limewater in the top-off');
  await enterTests(page, ['8.4', '8.3', '8.4', '8.3', '8.4']);
  await page.getByLabel('When', { exact: true }).fill('2026-03-05T12:00');
  await page.getByLabel('Done', { exact: true }).first().selectOption('reservoirFilled');
  await page.getByRole('button', { name: 'Add to the log' }).click();
  const [calendar] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Into my calendar' }).click({ timeout: 30_000 }),
  ]);
  expect(calendar.suggestedFilename()).toBe('next-test.ics');
  await expect(page.getByRole('link', { name: /All \d tanks/ })).toHaveCount(0);
  await page.getByRole('button', { name: 'Another tank' }).click();
  await page.getByLabel('Name of the new tank').fill('Quillon Bay nursery');
  await page.getByRole('button', { name: 'Begin its log' }).click();
  await enterTests(page, ['7.1', '6.9', '6.8', '6.6']);
  // A month later.
  await page.clock.setFixedTime('2026-04-10T18:00');
  await page.getByRole('link', { name: 'All 2 tanks' }).click();
  const tiles = page.getByRole('main').getByRole('listitem');
  await expect(tiles).toHaveCount(2);
  await expect(tiles.first()).toContainText('Quillon Bay nursery');
  await expect(tiles.first()).toContainText('outside now');
  await expect(tiles.nth(1)).toContainText(/may have left: test.*A test was due by 6 March/, {
    timeout: 30_000,
  });
  await expect(tiles.nth(1)).toContainText(
    /Runs out first: the reservoir may be empty since \d+ March 2026/,
    { timeout: 30_000 },
  );
  // Four stand beside one another, so that fifteen are seen in two screens.
  const { width, height } = (await tiles.nth(1).boundingBox())!;
  expect(width).toBeLessThan(300);
  expect(height).toBeLessThan(330);
  await looksRight(page, 'tanks', page.getByRole('main'));
  // What was worked out once is there at once, also after a reload.
  await page.reload();
  await expect(tiles.nth(1)).toContainText(/may have left: test/);
  await expect(tiles.nth(1)).toContainText('Runs out first: the reservoir');
  const askedAnew = () =>
    [...performance.getEntriesByName('answer'), ...performance.getEntriesByName('usedUp')].length;
  expect(await page.evaluate(askedAnew)).toBe(0);
  await tiles.first().getByRole('button').click();
  await expect(page.getByLabel('Tank', { exact: true })).toContainText('Quillon Bay nursery');
  await expect(page.locator('table').last()).toContainText('6.6');
});
