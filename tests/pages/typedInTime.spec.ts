import { expect, test } from '@playwright/test';

// What reads other units comes late, as over a slow line.
test.beforeEach(({ page }) =>
  page.route('**/dimensional*', async (route) => {
    await new Promise((later) => setTimeout(later, 1500));
    await route.continue();
  }),
);

test('a drill is asked with what was typed before the press, and not with what was refused', async ({
  page,
}) => {
  await page.goto('/#drills');
  await expect(page.locator('.headline')).toContainText('pH peaks at');
  const days = page.getByLabel('Followed for', { exact: true });
  const ask = page.getByRole('button', { name: 'Try the responses' });
  const trying = page.getByText('Six tanks are being tried…');
  await days.fill('48 bananas');
  await ask.click();
  await expect(days).toBeFocused({ timeout: 5000 });
  await expect(page.locator('.levers').getByRole('alert')).toContainText('bananas');
  await expect(trying).toHaveCount(0);
  await days.fill('48 h');
  await ask.click();
  await expect(trying).toBeVisible();
  await expect(days).toHaveValue('2');
});

test('what my tank runs by is what was typed before the press, and not what was refused', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  const volume = page.getByLabel('Net water volume', { exact: true });
  const runsBy = page.getByRole('button', { name: 'My tank runs by Trial A' });
  await volume.fill('a bathtub');
  await runsBy.click();
  await expect(volume).toBeFocused();
  await volume.fill('80 US gal');
  await runsBy.click();
  await expect(volume).toHaveValue('302.833');
  await page.getByRole('button', { name: "Today's plan", exact: true }).click();
  await expect(volume).toHaveValue('302.833');
});
