import { expect, test } from '@playwright/test';
import { galleryAddress } from '../../playwright.config';
import { looksRight } from './axe';

test('every part stands in the gallery, in either theme, with nothing for axe; and in no build', async ({
  page,
}) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  const inBuild = await page.request.get('/tests/gallery/index.html');
  expect(await inBuild.text()).not.toContain('Gallery');
  await page.goto(galleryAddress);
  const parts = ['Stamp and ink', 'Button', 'Field', 'Tabs', 'Table', 'Chart', 'Card'];
  for (const name of parts)
    await expect(page.getByRole('heading', { name, exact: true })).toBeVisible({ timeout: 60_000 });
  await expect(page.locator('.plot')).toHaveCount(5);
  await looksRight(page, 'gallery', page.getByRole('main'));
  expect(errors).toEqual([]);
});
