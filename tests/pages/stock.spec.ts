import { expect, test } from '@playwright/test';
import { looksRight } from './axe';
import { enterTests, openPlace, tankInTheLog } from './logged';

test('a bottle that lasted eleven days instead of fourteen, held against the plan', async ({
  page,
}) => {
  await tankInTheLog(page, 'dosing pumps: carbonate and calcium');
  const stock = page.locator('section.stock');
  await openPlace(page, 'Stock');
  const days = stock.getByLabel('in, days');
  await days.fill('none');
  await days.press('Enter');
  await expect(stock.getByRole('alert')).toBeVisible();
  await days.fill('4');
  // One press, straight from the field: it waits for nothing that only leaving the field brings.
  const ask = stock.getByRole('button', { name: 'Hold it against the plan' });
  await expect(ask).toBeEnabled();
  await ask.click();
  await expect(stock.locator('.headline')).toContainText(/gives [\d.]+ times what it is set to/, {
    timeout: 30_000,
  });
  await expect(stock).toContainText('does not answer the tank');
  await looksRight(page, 'stock', stock);
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

test('what is left, by when to order, and both after a reload', async ({ page }) => {
  await tankInTheLog(page, 'dosing pumps: carbonate and calcium');
  await enterTests(page, ['8.4', '8.3', '8.4']);
  const orders = page.locator('section.orders');
  await openPlace(page, 'Stock');
  const soda = orders.getByLabel('Left, g: sodium carbonate (soda ash)');
  await expect(soda).toBeVisible({ timeout: 30_000 });
  await soda.fill('much');
  await soda.press('Enter');
  await expect(orders.getByRole('alert')).toBeVisible();
  await soda.fill('2 kg');
  await soda.press('Enter');
  await expect(orders).toContainText(
    /Order by \d+ \w+ \d{4}: it may run out between .+ and .+, on .+ as set/,
  );
  const tests = orders.getByLabel('Left: alkalinity tests in the kit');
  await tests.fill('3');
  await tests.press('Enter');
  await expect(orders).toContainText('Order now');
  await looksRight(page, 'orders', orders);
  await orders.getByLabel('An order takes, days').fill('14');
  await orders.getByLabel('An order takes, days').press('Enter');
  await page.reload();
  await expect(soda).toHaveValue('2000', { timeout: 30_000 });
  await expect(tests).toHaveValue('3');
  await expect(orders.getByLabel('An order takes, days')).toHaveValue('14');
});
