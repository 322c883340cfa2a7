import { expect, test } from '@playwright/test';
import { leversOf, outOfSight, sizes } from './sight';

const pages = [
  { name: 'bench', hash: '', least: 30 },
  { name: 'drills', hash: '#drills', least: 4 },
];

for (const viewport of sizes) {
  for (const { name, hash, least } of pages) {
    test(`whatever lever of the ${name} is moved at ${viewport.width} wide, the picture it moves is in sight`, async ({
      page,
    }) => {
      await page.setViewportSize(viewport);
      await page.goto(`/${hash}`);
      await expect(page.locator('.headline')).toContainText(/dKH|pH peaks/);
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll<HTMLDetailsElement>('.levers details')) {
          fold.open = true;
        }
      });
      const chart = page.locator('.strip .plot');
      expect(await outOfSight(page, await leversOf(page, least), chart)).toEqual([]);
    });
  }

  test(`the verdict, its stamp and the large chart are in the first fold at ${viewport.width} wide`, async ({
    page,
  }) => {
    await page.setViewportSize(viewport);
    await page.goto('/');
    await expect(page.locator('.stamp')).toHaveText('alkalinity outside from day 11');
    const bottom = async (selector: string) => {
      const box = (await page.locator(selector).first().boundingBox())!;
      return box.y + box.height;
    };
    expect(await bottom('.headline')).toBeLessThan(viewport.height * 0.45);
    expect(await bottom('.strip .plot')).toBeLessThan(viewport.height * 0.75);
  });
}

test('a tile is made large by a press or a key, and the large one becomes a tile', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('dKH');
  const large = page.locator('.strip .title');
  await expect(large).toHaveText('Alkalinity');
  await page.getByRole('button', { name: 'Show pH large' }).click();
  await expect(large).toHaveText('pH');
  await page.getByRole('button', { name: 'Show Alkalinity large' }).focus();
  await page.keyboard.press('Enter');
  await expect(large).toHaveText('Alkalinity');
});

test('of a failure that cannot run nothing is drawn, and another has its levers with its picture on a phone', async ({
  page,
}) => {
  await page.setViewportSize(sizes[2]!);
  await page.goto('/#drills');
  const picture = page.locator('.strip .plot');
  await expect(picture).toBeVisible();
  const kinds = page.getByLabel('What', { exact: true });
  await kinds.selectOption('heater');
  await expect(picture).toBeVisible();
  expect(await outOfSight(page, await leversOf(page, 5), picture)).toEqual([]);
  // A pump that is not there cannot stick; what was asked before it is no answer to that.
  await kinds.selectOption('topOffOn');
  await kinds.selectOption('doserOn');
  await expect(page.locator('.first').getByRole('alert')).toHaveCount(1);
  await page.waitForTimeout(3000);
  await expect(picture).toHaveCount(0);
});
