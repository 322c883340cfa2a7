import { expect, test } from '@playwright/test';

test('the page opens, shows its name and logs no error', async ({ page }) => {
  const errors: string[] = [];
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('pageerror', (error) => errors.push(error.message));

  await page.goto('/');

  await expect(page.getByRole('heading', { level: 1, name: 'Paper Reef' })).toBeVisible();
  expect(errors).toEqual([]);
});
