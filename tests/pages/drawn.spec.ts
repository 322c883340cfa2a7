import { expect, test } from '@playwright/test';
import { axeFindsNothing } from './axe';

test('the drawn tank follows the time cursor, is played and stepped, and is read aloud', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/#bench');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  const drawn = page.getByRole('img', { name: /light off: .* dKH, pH/ });
  await expect(drawn).toBeVisible();
  await page.getByRole('button', { name: 'An hour on' }).click();
  await expect(page.locator('.cursor output').first()).toHaveText('day 1, 01:00');
  await expect(page.locator('.spoken')).toContainText('Day 1, 01:00');
  await page.getByRole('button', { name: 'Play' }).click();
  await expect(page.locator('.spoken')).toContainText('light on');
  await page.getByRole('button', { name: 'Pause' }).click();
  const spoken = await page.locator('.spoken').textContent();
  await expect(page.getByRole('img', { name: spoken! })).toBeVisible();
  await axeFindsNothing(page);
});

test('it stands still where motion is unwanted, and is folded on a phone', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/#bench');
  await page.getByText('The tank, drawn').click();
  await expect(page.getByRole('button', { name: 'An hour on' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Play' })).toHaveCount(0);
});
