import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Each width and each theme once. */
export const looks = [
  { width: 1280, colorScheme: 'light' },
  { width: 390, colorScheme: 'dark' },
] as const;

/** What axe finds on the page as it stands, each with the first place: nothing. */
export async function axeFindsNothing(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}
