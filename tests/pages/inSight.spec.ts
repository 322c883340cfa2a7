import { expect, test } from '@playwright/test';

const sizes = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
];

const pages = [
  { name: 'bench', hash: '', least: 30 },
  { name: 'drills', hash: '#drills', least: 3 },
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
      const levers = page.locator('.levers input[type=range]');
      const chart = page.locator('.strip .plot');
      await expect.poll(() => levers.count()).toBeGreaterThan(least);
      const hidden: string[] = [];
      for (const lever of await levers.all()) {
        await lever.scrollIntoViewIfNeeded();
        await lever.focus();
        const [at, picture] = await Promise.all([lever.boundingBox(), chart.boundingBox()]);
        const seen = (box: typeof at) => box && box.y >= 0 && box.y + box.height <= viewport.height;
        // On a phone the picture stands over the levers, and must not hide the one that is dragged.
        const covered = viewport.width < 860 && at && picture && at.y < picture.y + picture.height;
        if (!seen(at) || !seen(picture) || covered) {
          hidden.push((await lever.getAttribute('aria-label')) ?? '?');
        }
      }
      expect(hidden).toEqual([]);
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
