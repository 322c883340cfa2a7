import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page } from '@playwright/test';

/** Each width and each theme once. */
export const looks = [
  { width: 1280, colorScheme: 'light' },
  { width: 390, colorScheme: 'dark' },
] as const;

const SHOTS = process.env.SHOTS;

/**
 * The page at each width and in each theme: nothing that axe finds, nothing wider than it. With SHOTS a
 * folder, a picture of the piece at hand goes there.
 */
export async function looksRight(page: Page, name: string, piece: Locator): Promise<void> {
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await axeFindsNothing(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    if (SHOTS) await piece.screenshot({ path: `${SHOTS}/${name}-${width}-${colorScheme}.png` });
  }
}

/** What axe finds on the page as it stands, each with the first place: nothing. */
export async function axeFindsNothing(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}
