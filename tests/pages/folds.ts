import type { Page } from '@playwright/test';

/** Opens every fold of the bench, once all of it is there: what stands under the charts comes after the first answer. */
export async function openFolds(page: Page): Promise<void> {
  await page.locator('.levers details').first().waitFor();
  await page.locator('#assumptions-title').waitFor();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
}
