import { expect, test, type Page } from '@playwright/test';
import { writeLink } from '../../shared/scenario/link';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { axeFindsNothing } from './axe';

const scenario = scenarioFromFile('limewater-holds.json');
const fragmentOf = async (...names: string[]) => {
  const written = await writeLink(names.map((name) => ({ name, scenario })));
  if (!written.ok) throw new Error(written.message);
  return written.fragment;
};

/** Everything that this browser keeps for the page. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    const names = (await indexedDB.databases()).map(({ name }) => name!);
    const all = await Promise.all(
      names.map(
        (name) =>
          new Promise((resolve) => {
            const opening = indexedDB.open(name);
            opening.onsuccess = async () => {
              const db = opening.result;
              const stores = [...db.objectStoreNames];
              const values = stores.map(
                (store) =>
                  new Promise((got) => {
                    const asking = db.transaction(store).objectStore(store).getAll();
                    asking.onsuccess = () => got(asking.result);
                  }),
              );
              resolve(await Promise.all(values));
              db.close();
            };
          }),
      ),
    );
    return JSON.stringify([all, { ...localStorage }]);
  });

test.beforeEach(async ({ page }) => {
  await page.goto('/');
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await expect(page.locator('.headline')).toContainText('dKH');
  await page.waitForTimeout(600);
});

test('a copied link opens elsewhere, is looked at, added, and undone', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect(page.getByText('A link with all 2 plans is copied')).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toMatch(/#plan\/1\.[A-Za-z0-9_-]+$/);

  const before = await kept(page);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(link);
  await expect(page.getByText('It holds 2 plans')).toBeVisible();
  await expect(page.getByRole('listitem').first()).toContainText('dKH');
  expect(await kept(page)).toBe(before);
  const [, plans = ''] = link.split('#plan/1.');
  expect(asked.length).toBeGreaterThan(0);
  expect(asked.filter((url) => url.includes(plans.slice(0, 20)))).toEqual([]);

  await page.getByRole('button', { name: 'Add 2 trials to my bench' }).click();
  await expect(page).toHaveURL(/#bench$/);
  await expect(page.locator('.other')).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.other')).toHaveCount(1);
  await expect(page.getByLabel('Strength of the mix', { exact: true })).toHaveValue('1.20');
});

test('damaged, forged and over-long links say so and write nothing', async ({ page }) => {
  const before = await kept(page);
  const fragment = await fragmentOf('one');
  const links = [
    fragment.slice(0, -7),
    fragment.replace(/.(.{10})$/, '*$1'),
    `plan/9.${fragment.slice(7)}`,
    `plan/1.${'A'.repeat(40_000)}`,
    'plan/<img src=x onerror=alert(1)>',
    'plan',
  ];
  for (const link of links) {
    await page.goto(`/#${link}`);
    await expect(page.getByRole('alert')).toContainText('your bench is as it was');
    await expect(page.getByRole('alert').getByRole('listitem')).toHaveText(/^This link .{20,}\.$/);
  }
  await page.waitForTimeout(600);
  expect(await kept(page)).toBe(before);
});

test('what does not fit on the bench is said before anything is added', async ({ page }) => {
  await page.goto(`/#${await fragmentOf('one', 'two', 'three')}`);
  await expect(page.getByText('only the first 2 of these fit')).toBeVisible();
  await page.getByRole('button', { name: 'Add 2 trials to my bench' }).click();
  await expect(page.getByRole('button', { name: 'two', exact: true })).toBeVisible();
  await page.goto(`/#${await fragmentOf('four')}`);
  await expect(page.getByText('remove one there first')).toBeVisible();
});

for (const width of [1280, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`axe finds nothing in a link at ${width} wide, ${colorScheme}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      for (const fragment of [await fragmentOf('one', 'two'), 'plan/1.broken']) {
        await page.goto(`/#${fragment}`);
        await expect(page.getByText(/It holds 2 plans|was not opened/)).toBeVisible();
        await axeFindsNothing(page);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(width);
      }
    });
  }
}
