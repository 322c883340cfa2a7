import { expect, test } from '@playwright/test';
import { axeFindsNothing, looks } from './axe';
import { tankInTheLog } from './logged';

const SHOTS = process.env.SHOTS;

test('a bottle that lasted eleven days instead of fourteen, held against the plan', async ({
  page,
}) => {
  await tankInTheLog(page, 'a dosing pump with carbonate');
  const stock = page.locator('details.stock');
  await stock.locator('summary').click();
  const days = stock.getByLabel('in, days');
  await days.fill('none');
  await days.press('Enter');
  await expect(stock.getByRole('alert')).toBeVisible();
  await days.fill('4');
  await days.press('Enter');
  await stock.getByRole('button', { name: 'Hold it against the plan' }).click();
  await expect(stock.locator('.headline')).toContainText(/gives [\d.]+ times what it is set to/, {
    timeout: 30_000,
  });
  await expect(stock).toContainText('does not answer the tank');
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await axeFindsNothing(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    if (SHOTS) await stock.screenshot({ path: `${SHOTS}/stock-${width}-${colorScheme}.png` });
  }
  await stock.getByLabel('Of').selectOption({ label: 'the top-off’s reservoir' });
  await expect(stock.getByLabel('went, L')).not.toHaveValue('');
  await stock.getByRole('button', { name: 'Hold it against the plan' }).click();
  await expect(stock).toContainText(/The top-off brings|No difference/, { timeout: 30_000 });
  const trial = stock.getByRole('button', { name: 'Try it on the bench as it truly runs' });
  if (await trial.isVisible()) {
    await trial.click();
    await expect(page.getByText('As the top-off’s reservoir truly gives').first()).toBeVisible();
  }
});
