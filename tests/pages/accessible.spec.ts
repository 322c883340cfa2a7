import { expect, test } from '@playwright/test';
import { axeFindsNothing, looks } from './axe';
import { openFolds } from './folds';

/** With every fold open axe has much to read. */
test.setTimeout(120_000);

for (const { width, colorScheme } of looks) {
  test(`axe finds nothing at ${width} wide in the ${colorScheme} theme, folds open`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('/');
    await expect(page.locator('.headline')).toContainText('dKH');
    await openFolds(page);
    await page.getByRole('button', { name: 'Add a two-part pair' }).click();
    await page.getByRole('button', { name: 'Add a one-off addition' }).click();
    await expect(page.getByRole('img')).toHaveCount(15);
    await axeFindsNothing(page);
  });
}

test('nothing is wider than the screen at 390', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('dKH');
  await page.getByLabel('Strength of the mix, slider').fill('1.4');
  await openFolds(page);
  await expect(page.getByText(/less Today's plan, in/)).toBeVisible();
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
});

for (const width of [1280, 390]) {
  test(`at 200 % text no page is wider than the screen of ${width}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    for (const hash of ['bench', 'log', 'drills', 'words', 'display', 'tanks']) {
      await page.goto(`/#${hash}`);
      await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
      await expect(page.locator('main').locator('h2, p, dt, label').first()).toBeVisible();
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth), { message: hash })
        .toBeLessThanOrEqual(width);
    }
  });
}

test('every control takes the focus by keyboard, in the order of the page', async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('dKH');
  const wanted = await page.evaluate(() => {
    const seen = [...document.querySelectorAll('a[href], button, input, select, summary')].filter(
      (control) => control.checkVisibility() && !(control as HTMLButtonElement).disabled,
    );
    seen.forEach((control, i) => control.setAttribute('data-order', String(i)));
    return seen.length;
  });
  expect(wanted).toBeGreaterThan(30);
  const reached: string[] = [];
  for (let i = 0; i < wanted + 5; i++) {
    await page.keyboard.press('Tab');
    const order = await page.evaluate(() => document.activeElement?.getAttribute('data-order'));
    if (order) reached.push(order);
  }
  const inOrder = Array.from({ length: wanted }, (_, i) => String(i));
  expect(reached.slice(0, wanted)).toEqual(inOrder);
});
