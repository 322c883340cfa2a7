import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { axeFindsNothing } from './axe';

test.beforeEach(async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('after 60 days');
});

test('a reload in the same breath as an edit still finds the edit', async ({ page }) => {
  const use = page.getByLabel('Alkalinity use', { exact: true });
  await use.fill('2');
  await use.press('Enter');
  await expect(use).toHaveValue('2.00');
  for (let reload = 0; reload < 3; reload++) {
    await page.reload();
    await expect(use).toHaveValue('2.00');
  }
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

test('an example makes room for another only until something is mine', async ({ page }) => {
  const plans = page.getByRole('region', { name: 'Trials on the bench' }).getByRole('listitem');
  await page.getByRole('button', { name: 'Lagoon left alone' }).click();
  await expect(page.locator('.question')).toContainText('Lagoon left alone');
  await expect(plans).toHaveCount(2);
  await page.getByLabel('Alkalinity use, slider').fill('1.2');
  await page.getByRole('button', { name: /pico/i }).click();
  await expect(plans).toHaveCount(3);
  await expect(page.locator('.headline')).toContainText(/pico/i);
  await page.getByRole('button', { name: 'Keep, and try another' }).click();
  await page.getByRole('button', { name: 'Lagoon left alone' }).click();
  await expect(page.getByRole('alert')).toContainText('finds no room on the bench');
  await expect(plans).toHaveCount(4);
  await page.getByRole('alert').getByRole('button', { name: 'Remove Trial A' }).click();
  await expect(page.getByRole('button', { name: 'Trial A', exact: true })).toHaveCount(0);
  await expect(page.locator('.headline')).toContainText('Lagoon left alone');
});

test('what the tank runs by is said once, dated, tried beside, and taken back after a reload', async ({
  page,
}) => {
  const runsBy = page.locator('.runs-by');
  const volume = page.getByLabel('Net water volume', { exact: true });
  await expect(runsBy).toContainText('which you have not called yours yet');
  await volume.fill('500');
  await volume.press('Enter');
  await page.getByRole('button', { name: 'My tank runs by Trial A' }).click();
  await expect(runsBy).toContainText(/since \d+ \w+ \d{4}, \d\d:\d\d/);
  await expect(page.locator('.question')).toContainText('My tank');
  await page.getByRole('button', { name: "Today's plan", exact: true }).click();
  await page.getByLabel('Strength of the mix, slider').fill('1.3');
  await expect(page.getByRole('button', { name: 'Trial A', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('button', { name: 'My tank runs by Trial A' }).click();
  await page.waitForTimeout(600);
  await page.reload();
  await runsBy.getByText('2 plans before this one').click();
  await expect(runsBy.getByRole('listitem').first()).toContainText(
    'Strength of the mix 0.9 g/L (now 1.3 g/L)',
  );
  await runsBy.getByRole('button', { name: 'Run by this again' }).first().click();
  await page.getByRole('button', { name: "Today's plan", exact: true }).click();
  await expect(page.getByLabel('Strength of the mix', { exact: true })).toHaveValue('0.90');
  await expect(volume).toHaveValue('500');
});

test('a trial can start from the water of today’s plan', async ({ page }) => {
  await page.getByText('How the trial starts').click();
  await page.getByLabel('Strength of the mix, slider').fill('1.5');
  await page.getByRole('button', { name: "Start from the water of Today's plan" }).click();
  await expect(page.getByLabel('Starting pH')).toHaveValue('measuredPh');
  const names = page.getByRole('img', { name: /^pH over time/ });
  await expect(names).toHaveAccessibleName(/Today's plan (8\.0\d) NBS, Trial A \1 NBS/);
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

test('what cannot be read is put aside, and is seen, saved and deleted on the page Display', async ({
  page,
}) => {
  const use = page.getByLabel('Alkalinity use', { exact: true });
  await use.fill('2');
  await use.press('Enter');
  await page.waitForTimeout(800);
  await page.goto('/icon.svg');
  await page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await done(indexedDB.open('paper-reef'));
    const store = db.transaction('tanks', 'readwrite').objectStore('tanks');
    const tank = await done(store.get('tank-1'));
    tank.bench.plans[0].scenario.days = 'soon';
    tank.log.readings = [{ at: '2026-03-01T10:30', alkalinityDkh: 8.4 }];
    await done(store.put(tank, 'tank-1'));
    db.close();
  });
  await page.goto('/');
  await expect(page.getByRole('status').filter({ hasText: 'put aside as it was' })).toBeVisible();
  await expect(use).toHaveValue('2.00');
  await page.goto('/#log');
  await expect(page.getByRole('cell', { name: '8.40' })).toBeVisible();
  await page.goto('/#display');
  const aside = page.getByRole('region', { name: 'Put aside' });
  await expect(aside).toContainText('Today\'s plan: days (Length of the trial): got "soon"');
  await axeFindsNothing(page);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    aside.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  expect(readFileSync(await file.path(), 'utf8')).toContain('"days": "soon"');
  await aside.getByRole('button', { name: 'Delete' }).click();
  await aside.getByRole('button', { name: 'Delete it for good' }).click();
  await expect(aside).toHaveCount(0);
  await page.reload();
  await expect(page.getByLabel('Language · Sprache')).toBeVisible();
  await expect(aside).toHaveCount(0);
});
