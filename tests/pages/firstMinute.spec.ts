import { expect, test } from '@playwright/test';
import { axeFindsNothing } from './axe';

test('three answers put a tank like theirs on the bench, and are never asked again', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByLabel('How much water, without rock?').fill('16 gal');
  await page.getByLabel('How much water, without rock?').press('Tab');
  await page.getByLabel('What lives in it?').selectOption('dense stony corals');
  await page.getByLabel('What brings alkalinity now?').selectOption('limewater in the top-off');
  await page.getByRole('button', { name: 'Put it on the bench' }).click();
  await expect(page.locator('.question')).toContainText('assumed until you measure them');
  await expect(page.getByLabel('Net water volume', { exact: true })).toHaveValue('61');
  await expect(page.getByLabel('Alkalinity use', { exact: true })).toHaveValue('2.50');
  await expect(page.locator('.headline')).toContainText('falls below 7');
  await page.reload();
  await expect(page.locator('.headline')).toContainText('falls below 7');
  await expect(page.getByText('A tank like yours, in three answers')).toHaveCount(0);
});

test('what was typed in another unit is read before it is put on the bench, and what is no number is not put', async ({
  page,
}) => {
  await page.route('**/dimensional*', async (route) => {
    await new Promise((later) => setTimeout(later, 1500));
    await route.continue();
  });
  await page.goto('/');
  const volume = page.getByLabel('How much water, without rock?');
  const put = page.getByRole('button', { name: 'Put it on the bench' });
  await volume.fill('a bathtub');
  await volume.press('Tab');
  await put.click();
  await expect(volume).toBeFocused();
  await expect(put).toBeVisible();
  await volume.fill('16 gal');
  await put.click();
  await expect(page.getByLabel('Net water volume', { exact: true })).toHaveValue('61');
});

test('they lead to the lesson and wait meanwhile, and are skipped once and for all', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('link', { name: 'Show me why alkalinity falls' }).click();
  await expect(
    page.getByRole('heading', { name: 'Why alkalinity falls as corals grow' }),
  ).toBeVisible();
  await page.getByRole('link', { name: 'Bench', exact: true }).click();
  const skip = page.getByRole('button', { name: 'Skip, I know my way' });
  await skip.click();
  await expect(skip).toHaveCount(0);
  await page.reload();
  await expect(page.locator('.headline')).toContainText('dKH');
  await expect(skip).toHaveCount(0);
});

test('on a phone the answer is in sight once they are answered', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 640 });
  await page.goto('/');
  await page.getByRole('button', { name: 'Put it on the bench' }).click();
  await expect(page.locator('.question')).toContainText('assumed until you measure them');
  await expect(page.locator('.question')).toBeInViewport();
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
});

test('they come back with “Start over” while no tank is the keeper’s, and not after', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  await page.reload();
  await expect(page.locator('.headline')).toContainText('dKH');
  const put = page.getByRole('button', { name: 'Put it on the bench' });
  await expect(put).toHaveCount(0);
  const over = page.getByRole('button', { name: 'Start over' });
  await over.click();
  await put.click();
  await expect(page.locator('.question')).toContainText('assumed until you measure them');
  await over.click();
  await expect(put).toHaveCount(0);
});

test('they do not stand over a tank that has a log', async ({ page }) => {
  await page.goto('/#log');
  const dkh = page.getByLabel('Alkalinity', { exact: true });
  await dkh.fill('8.1');
  await dkh.press('Enter');
  await expect(dkh).toHaveValue('');
  await page.getByRole('link', { name: 'Bench', exact: true }).click();
  await expect(page.getByLabel('Strength of the mix, slider')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Put it on the bench' })).toHaveCount(0);
});

test('every word has its sentence on one page', async ({ page }) => {
  await page.goto('/#words');
  await expect(page.getByText('kLa', { exact: true })).toBeVisible();
  await axeFindsNothing(page);
});
