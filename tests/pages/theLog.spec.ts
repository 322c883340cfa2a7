import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';

const SIX = ['8.4', '8.1', '8,2', '7.8', '7.7', '7.5'];

/** Six readings, a day apart, the last one this minute. */
async function enterSix(page: Page) {
  await page.goto('/#log');
  const dkh = page.getByLabel('Alkalinity', { exact: true }).first();
  for (const [i, value] of SIX.entries()) {
    await dkh.fill(value);
    if (i < SIX.length - 1) {
      const fold = page.locator('details', { hasText: 'Another time' }).first();
      if (!(await fold.evaluate((d: HTMLDetailsElement) => d.open)))
        await fold.locator('summary').click();
      await page.getByLabel('When', { exact: true }).fill(`2026-03-0${i + 1}T10:30`);
    } else await page.getByLabel('When', { exact: true }).fill('2026-03-06T10:30');
    await dkh.press('Enter');
    await expect(dkh).toHaveValue('');
  }
}

const headline = (page: Page) => page.locator('main .headline').first();

test('six readings go in, consumption and its uncertainty come out, and all stays', async ({
  page,
}) => {
  await enterSix(page);
  await expect(headline(page)).toContainText(
    /The corals take \d\.\d\d ± 0\.\d\d dKH a day on 6 March/,
  );
  await expect(page.getByText(/Test next on \d+ March|daily|known to ±0.1/).first()).toBeVisible();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(6);
  await page.getByRole('button', { name: 'Delete 6 March, 10:30' }).click();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(5);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Edit 5 March, 10:30' }).click();
  await page.getByLabel('Alkalinity', { exact: true }).nth(1).fill('7.75');
  await page.getByRole('button', { name: 'Keep the change' }).click();
  await page.reload();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(6);
  await expect(page.getByRole('row', { name: /5 March/ })).toContainText('7.75');
});

for (const width of [1280, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`axe finds nothing on the log at ${width} wide, ${colorScheme}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      await enterSix(page);
      await expect(headline(page)).toContainText('The corals take');
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
      });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    });
  }
}
