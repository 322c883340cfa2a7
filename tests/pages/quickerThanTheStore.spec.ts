import { expect, test } from '@playwright/test';

test('a lever turned before the store has answered is turned on the tank that then opens', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  const volume = page.getByLabel('Net water volume', { exact: true });
  const evaporation = page.getByLabel('Evaporation', { exact: true });
  await volume.fill('250');
  await volume.press('Enter');
  await page.getByRole('button', { name: 'My tank runs by Trial A' }).click();
  await expect(page.getByText(/^Your tank runs by/)).toBeVisible();
  // Saved a moment after.
  await page.waitForTimeout(1500);
  let answers: () => void = () => undefined;
  const asked = new Promise<void>((later) => (answers = later));
  await page.route('**/store-*.js', async (route) => {
    await asked;
    await route.continue();
  });
  await page.reload();
  await expect(volume).not.toHaveValue('250');
  await evaporation.fill('7');
  await evaporation.press('Enter');
  answers();
  await expect(volume).toHaveValue('250');
  await expect(evaporation).toHaveValue('7.0');
  // The real tank's own stays what it was.
  await page.getByRole('button', { name: "Today's plan", exact: true }).click();
  await expect(evaporation).not.toHaveValue('7.0');
});
