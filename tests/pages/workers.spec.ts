import { expect, test } from '@playwright/test';

test('twenty changes of page leave no more workers than the machine has cores', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('dKH');
  const cores = await page.evaluate(() => navigator.hardwareConcurrency);
  const pages = ['Drills', 'Log', 'Bench', 'Lessons'];
  for (let i = 0; i < 20; i++) {
    await page
      .getByRole('navigation')
      .getByRole('link', { name: pages[i % 4]! })
      .click();
    await expect(page.locator('main')).not.toContainText('Opening…');
    // Long enough for each page to ask what it asks; one that was ended takes a moment to be gone.
    await page.waitForTimeout(100);
    await expect.poll(() => page.workers().length).toBeLessThanOrEqual(cores);
  }
  expect(page.workers().length).toBeGreaterThan(0);
});

test('on a first visit, where the engine cannot be fetched the page says so, and does not wait for ever', async ({
  page,
}) => {
  await page.route('**/desk.worker*', (route) => route.abort());
  await page.goto('/');
  const sentence = 'what works it out could not be fetched. Reload the page to try again.';
  await expect(page.getByRole('alert').first()).toContainText(sentence);
  await expect(page.getByText('is being worked out')).toHaveCount(0);
  await page.goto('/#drills');
  await expect(page.locator('.answer').getByRole('alert')).toContainText(sentence);
});
