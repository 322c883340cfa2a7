import { expect, test } from '@playwright/test';

test.beforeEach(async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('after 60 days');
});

test('a seasonal factor is typed as an expression, plotted, and points at its mistakes', async ({
  page,
}) => {
  await page.getByText('Evaporation in detail').click();
  const factor = page.getByLabel('Evaporation through the seasons');
  await factor.fill('1 + banana * day');
  await expect(page.getByRole('alert')).toContainText('At character 5: “banana” is not known here');
  await expect(page.getByRole('alert')).toContainText('“1” stays in force');
  const before = await page.locator('.headline').textContent();
  await factor.fill('1 + 0.4 * sin(2 * pi * day / 30)');
  await factor.press('Enter');
  await expect(page.getByRole('img', { name: 'The factor over the trial' })).toBeVisible();
  await expect(page.locator('.headline')).not.toHaveText(before!);
});

test('the difference of two trials is drawn, and what did it is told', async ({ page }) => {
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await page.getByLabel('Evaporation, slider', { exact: true }).fill('4.2');
  await expect(
    page.getByRole('img', { name: /^Difference in alkalinity over time/ }),
  ).toBeVisible();
  await page.getByRole('button', { name: /What did it/ }).click();
  const effects = page.getByRole('row', { name: /dKH/ }).filter({ hasText: /Top-off|Evaporation/ });
  await expect(effects.first()).toContainText('Top-off: Strength of the mix');
  await expect(effects.first()).toContainText(/\+\d\.\d\d dKH/);
});

test('a pump doses by a schedule of its own', async ({ page }) => {
  await page.getByRole('button', { name: 'Add bicarbonate' }).click();
  const dose = page.getByLabel('Dose of bicarbonate', { exact: true });
  await dose.fill('30');
  await dose.press('Enter');
  await page.getByText('Recipe, hours, bottle').click();
  await page.getByLabel('Dosed', { exact: true }).selectOption('doses');
  await page.getByLabel('Mo', { exact: true }).check();
  await page.getByText('The same as a table').click();
  const row = page.getByRole('row', { name: /bicarbonate/ }).first();
  await page.getByRole('slider', { name: 'Time cursor' }).fill('20');
  await expect(row).toContainText(/\+0\.\d+/);
  await page.getByRole('slider', { name: 'Time cursor' }).fill('30');
  await expect(page.getByRole('row', { name: /^bicarbonate/ })).toHaveCount(0);
});
