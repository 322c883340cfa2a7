import { expect, test } from '@playwright/test';

test.beforeEach(async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('after 60 days');
});

test('a reload in the same breath as an edit still finds the edit', async ({ page }) => {
  const use = page.getByLabel('Alkalinity use', { exact: true });
  await use.fill('2');
  await use.press('Enter');
  await expect(use).toHaveValue('2.00');
  await page.reload();
  await expect(use).toHaveValue('2.00');
  await expect(page.getByRole('button', { name: 'Trial A', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
});

test('undo takes back what stands refused in a field', async ({ page }) => {
  const volume = page.getByLabel('Net water volume', { exact: true });
  await volume.fill('banana');
  await volume.press('Enter');
  await expect(page.getByRole('alert')).toContainText('300 L stays in force');
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(volume).toHaveValue('300');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('a tank that dries up stops its trial and says where, when and why', async ({ page }) => {
  const evaporation = page.getByLabel('Evaporation', { exact: true });
  await evaporation.fill('150');
  await evaporation.press('Enter');
  await expect(page.locator('.headline')).toContainText('stops on day');
  await expect(page.locator('.details')).toContainText(
    'in the tank too much water has evaporated (salinity 6',
  );
  await expect(page.locator('body')).not.toContainText('NaN');
});

test('a scenario opens as one more trial beside mine', async ({ page }) => {
  await page.getByLabel(/open as one more trial/).check();
  await page.getByRole('button', { name: 'Lagoon left alone' }).click();
  await expect(page.getByRole('button', { name: "Today's plan", exact: true })).toBeVisible();
  await expect(page.locator('.headline')).toContainText('Lagoon left alone');
});

test('a trial can start from the water of today’s plan', async ({ page }) => {
  await page.getByText('How the trial starts').click();
  await page.getByLabel('Strength of the mix, slider').fill('1.5');
  await page.getByRole('button', { name: "Start from the water of Today's plan" }).click();
  await expect(page.getByLabel('Starting pH')).toHaveValue('measuredPh');
  const names = page.getByRole('img', { name: /^pH over time/ });
  await expect(names).toHaveAccessibleName(/Today's plan 8\.00 NBS, Trial A 8\.00 NBS/);
});

test('a bench that was saved before there were tanks opens as the first tank', async ({ page }) => {
  const use = page.getByLabel('Alkalinity use', { exact: true });
  await use.fill('2');
  await use.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await page.waitForTimeout(1000);
  await page.goto('/icon.svg');
  await page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const now = await done(indexedDB.open('paper-reef'));
    const tank = await done(now.transaction('tanks').objectStore('tanks').get('tank-1'));
    now.close();
    await done(indexedDB.deleteDatabase('paper-reef'));
    localStorage.clear();
    const opening = indexedDB.open('paper-reef', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('bench');
    const old = await done(opening);
    await done(old.transaction('bench', 'readwrite').objectStore('bench').put(tank.bench, 'plans'));
    old.close();
  });
  await page.goto('/');
  await expect(use).toHaveValue('2.00');
  await page.goto('/#log');
  await expect(page.getByLabel('Tank', { exact: true })).toHaveText(
    /The lagoon of the field school/,
  );
});
