import { expect, test, type Page } from '@playwright/test';
import { looksRight } from './axe';
import { openPlace } from './logged';

/** Six months of a keeper whose calcium crept up and whose magnesium fell. */
const LINES = [
  'date,alkalinity (dKH),calcium (mg/L),magnesium (mg/L),salinity (ppt)',
  ...['05-02', '06-01', '07-03', '08-02', '09-01', '10-03', '10-31'].map((day, i) =>
    [
      `2026-${day}T10:00`,
      (8.4 - 0.1 * (i % 2)).toFixed(1),
      425 + 4 * i,
      1330 - 22 * i,
      (35 + 0.08 * i).toFixed(1),
    ].join(','),
  ),
].join('\n');

/** A tank on a two-part pair, with 10 % of its water changed each week. */
const PLAN = {
  ...{ type: 'paper-reef/scenario', version: 4, title: 'A pair at Mill Weir', days: 60 },
  tank: { volumeL: 300, alkalinityDkh: 8.3 },
  corals: { useDkhPerDay: 1, growthPercentPerDay: 0 },
  evaporation: { litresPerDay: 4 },
  waterChanges: { percent: 10, everyDays: 7 },
  dosers: [
    {
      ...{ name: 'part one', mlPerDay: 57, stockL: 5 },
      recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 100 }],
    },
    {
      ...{ name: 'part two', mlPerDay: 57, stockL: 5 },
      recipe: [{ additive: 'calciumChlorideDihydrate', gramsPerL: 139 }],
    },
  ],
};

async function sixMonths(page: Page) {
  await page.clock.setFixedTime('2026-10-31T18:00');
  await page.goto('/');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  await page.getByLabel('Open a scenario file').setInputFiles({
    ...{ name: 'pair.json', mimeType: 'application/json' },
    buffer: Buffer.from(JSON.stringify(PLAN)),
  });
  await page.getByRole('button', { name: /^My tank runs by/ }).click();
  await page.goto('/#log');
  await page.locator('#paste-lines summary').click();
  await page.getByLabel('Lines to read').fill(LINES);
  await page.getByRole('button', { name: 'Read these lines' }).click();
  await page.getByRole('button', { name: /Take these 7 lines/ }).click();
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(7);
}

/** Whether each season that is asked from now on brings the turn along. */
async function seasonsAsked(page: Page): Promise<() => Promise<boolean[]>> {
  await page.addInitScript(() => {
    const seen: boolean[] = [];
    Object.assign(window, { seen });
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (message: unknown, ...rest: unknown[]) {
      const [asked] = (message as { argumentList?: { value?: unknown }[] }).argumentList ?? [];
      const { name, asked: given } = (asked?.value ?? {}) as { name?: string; asked?: object };
      if (name === 'season') seen.push('told' in given!);
      Reflect.apply(postMessage, this, [message, ...rest]);
    };
  });
  return () => page.evaluate(() => (window as unknown as { seen: boolean[] }).seen);
}

test('why calcium crept up and magnesium fell, what to add, and how much water to change', async ({
  page,
}) => {
  test.setTimeout(90_000);
  const asked = await seasonsAsked(page);
  await sixMonths(page);
  // The turn is there before anybody asks.
  const turn = page.getByRole('region', { name: 'What to turn' });
  await expect(turn.locator('.headline')).toBeVisible({ timeout: 60_000 });
  await expect(turn.locator('[aria-live]')).toHaveAttribute('aria-busy', 'false');
  const season = page.locator('section.season');
  await openPlace(page, 'Season');
  const target = season.getByLabel('Magnesium to, mg/L');
  await target.fill('2000');
  await target.press('Enter');
  await expect(season.getByRole('alert')).toBeVisible();
  // The new target takes away what was told beside the turn, a screen above the button.
  await expect(turn.getByRole('heading', { level: 3 })).toBeVisible({ timeout: 60_000 });
  await target.fill('1320');
  await season.getByRole('button', { name: 'Look over the season' }).click();
  const headline = season.locator('.headline');
  await expect(headline).toContainText(/Magnesium has fallen by \d+ mg\/L since 2 May/, {
    timeout: 90_000,
  });
  // No turn is worked out twice.
  expect(await asked()).toEqual([true]);
  await expect(headline).toContainText(/Add [\d.]+ g magnesium chloride hexahydrate each morning/);
  await expect(season.getByRole('row', { name: /^magnesium/ })).toContainText('water changes');
  await expect(season).toContainText('What would tell:');
  for (const fold of await season.locator('details summary').all()) await fold.click();
  await expect(season).toContainText(/If nothing is turned, salinity goes from/);
  await looksRight(page, 'season', season);
  await page.setViewportSize({ width: 1280, height: 900 });
  // Tried beside the real tank, never in it.
  const runsBy = page.getByText(/^Your tank runs by/);
  const before = await runsBy.textContent();
  await season.getByRole('button', { name: 'Try it on the bench' }).click();
  await expect(page.getByRole('button', { name: 'Season', exact: true })).toBeVisible();
  await page.goto('/#log');
  await expect(runsBy).toHaveText(before!);
});
