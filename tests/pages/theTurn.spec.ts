import { expect, test, type Page } from '@playwright/test';
import { axeFindsNothing, looks } from './axe';
import { enterTests, tankInTheLog } from './logged';

const SHOTS = process.env.SHOTS;
const TESTS = ['8.4', '8.3', '8.1', '8.0', '7.9', '7.7', '7.6', '7.5'];

/** A pump that brings too little, and the tests that show it. */
async function pumpThatFallsShort(page: Page) {
  await tankInTheLog(page, 'dosing pumps: carbonate and calcium');
  await enterTests(page, TESTS);
}

const turnOf = (page: Page) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: 'What to turn' }) });

for (const { width, colorScheme } of looks) {
  test(`the turn at ${width} wide, ${colorScheme}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await pumpThatFallsShort(page);
    const turn = turnOf(page);
    await expect(turn.locator('.headline')).toContainText(
      /Turn “.+” from [\d.]+ to [\d.]+ mL a day.*→ 8\.5 dKH in \d+ days?; range/,
      { timeout: 30_000 },
    );
    for (const fold of await turn.locator('summary').all()) await fold.click();
    await turn.getByLabel('There within, days').fill('10');
    await turn.getByLabel('There within, days').press('Enter');
    await expect(turn).toContainText(/Yes: at 8\.5 dKH after|Not within 10 days/);
    await turn.getByLabel('When does it stand at, dKH?').fill('7');
    await turn.getByLabel('When does it stand at, dKH?').press('Enter');
    await expect(turn).toContainText(/As the tank runs now it (stands|does not stand) at 7 dKH/, {
      timeout: 20_000,
    });
    await axeFindsNothing(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    if (SHOTS) await turn.screenshot({ path: `${SHOTS}/turn-${width}-${colorScheme}.png` });
    if (SHOTS)
      await page.screenshot({ path: `${SHOTS}/log-${width}-${colorScheme}.png`, fullPage: true });
  });
}

test('is tried beside today’s plan, and is run by only when it is said so, and taken back', async ({
  page,
}) => {
  await pumpThatFallsShort(page);
  const turn = turnOf(page);
  const asked = turn.locator('.headline');
  await expect(asked).toContainText(/Turn “/, { timeout: 30_000 });
  const plan = page.locator('.margin-note').filter({ hasText: 'Read against today’s plan' });
  const before = await plan.textContent();
  await turn.getByRole('button', { name: 'Try it on the bench' }).click();
  await expect(page.getByRole('button', { name: 'Turned for 8.5 dKH', exact: true })).toBeVisible();
  await page.goto('/#log');
  await expect(plan).toHaveText(before!);
  await expect(asked).toContainText(/Turn “/, { timeout: 30_000 });
  const use = page.locator('main .headline').first();
  const told = await use.textContent();
  await turn.getByRole('button', { name: 'My tank runs by this from now on' }).click();
  await expect(plan).not.toHaveText(before!);
  // What was read is read by what ran then; nothing more is turned, or poured, before the next test.
  await expect(asked).toContainText(/^What runs was turned on/, { timeout: 30_000 });
  await expect(use).toHaveText(told!);
  await expect(page.getByRole('cell', { name: /^Turned: Turn “/ })).toBeVisible();
  await page.reload();
  await expect(plan).not.toHaveText(before!);
  await page.getByText(/plans? before this one/).click();
  await page.getByRole('button', { name: 'Run by this again' }).last().click();
  await expect(plan).toHaveText(before!);
  await expect(asked).toContainText(/Turn “/, { timeout: 30_000 });
});

test('gives grams for calcium with the turn, keeps what else was typed, and turns one bottle alone where it is said so', async ({
  page,
}) => {
  await tankInTheLog(page, 'dosing pumps: carbonate and calcium');
  await enterTests(page, TESTS.slice(0, -1));
  await page.clock.setFixedTime('2026-03-08T18:00');
  await page.getByLabel('When', { exact: true }).fill('2026-03-08T10:30');
  await page.getByLabel('Calcium', { exact: true }).first().fill('372');
  await page.getByLabel('Phosphate', { exact: true }).first().fill('30 ppb');
  await page.getByLabel('Done', { exact: true }).first().selectOption('cleaned');
  await page.getByLabel('To what', { exact: true }).first().fill('skimmer');
  await page.getByLabel('Notes', { exact: true }).first().fill('polyps shut');
  const dkh = page.getByLabel('Alkalinity', { exact: true }).first();
  await dkh.fill('7.5');
  await dkh.press('Enter');
  const turn = turnOf(page);
  await expect(turn).toContainText(
    /Calcium stands at 372 mg\/L, below your 400 mg\/L\. Add [\d.]+ g/,
    {
      timeout: 40_000,
    },
  );
  await expect(turn).toContainText('both were run as one for 28 days');
  if (SHOTS) await turn.screenshot({ path: `${SHOTS}/turn-calcium.png` });
  // What was noted stands on the month in pencil, and is read by key as by pointer.
  const note = page.getByRole('button', { name: '8 March: skimmer: cleaned. polyps shut' });
  await note.focus();
  await expect(page.getByText('8 March: skimmer: cleaned. polyps shut')).toBeVisible();
  await expect(
    page.getByRole('cell', { name: /skimmer: cleaned, .*Phosphate 0\.03 mg\/L/ }),
  ).toBeVisible();
  await axeFindsNothing(page);
  const link = turn.getByLabel('Turn the bottles of a pair together');
  await link.uncheck();
  await expect(turn).toContainText(/The bottles are unlinked: “.+” stays at/, { timeout: 40_000 });
  await page.reload();
  await expect(link).not.toBeChecked();
});

test('says whose tank it is reckoned for until the keeper has said which is theirs', async ({
  page,
}) => {
  await page.goto('/#log');
  await enterTests(page, ['6.8']);
  const turn = turnOf(page);
  await expect(turn).toContainText(/Reckoned for 300 L.*You have not called that your tank/, {
    timeout: 30_000,
  });
  await turn.getByRole('link', { name: 'put it right first.' }).click();
  await page.getByRole('button', { name: 'My tank runs by Trial A' }).click();
  await page.goto('/#log');
  await expect(turn.locator('.headline')).toBeVisible({ timeout: 30_000 });
  await expect(turn).not.toContainText('Reckoned for');
});

test('turns what is poured in by hand, and leaves the plan as it is', async ({ page }) => {
  await tankInTheLog(page, 'nothing yet');
  await enterTests(page, ['8.5', '8.3', '8.2', '8.0', '7.9']);
  const grams = page.getByLabel('Amount poured in', { exact: true });
  const powder = page.getByLabel('Poured in', { exact: true });
  for (const day of ['01', '02', '03', '04']) {
    await powder.selectOption({ label: 'sodium bicarbonate' });
    await grams.fill('5.75');
    await page.getByLabel('When', { exact: true }).fill(`2026-03-${day}T20:00`);
    await grams.press('Enter');
    await expect(grams).toHaveValue('');
  }
  const turn = turnOf(page);
  await expect(turn.locator('.headline')).toContainText(
    /^Pour in [\d.]+ g of sodium bicarbonate each day instead of 5\.75 g; 7\.9 → 8\.5 dKH/,
    { timeout: 30_000 },
  );
  await expect(turn).toContainText('Write each pour into the log');
  await expect(turn.getByRole('button', { name: 'My tank runs by this from now on' })).toHaveCount(
    0,
  );
  await turn.getByRole('button', { name: 'Try it on the bench' }).click();
  await expect(page.getByRole('button', { name: 'Turned for 8.5 dKH', exact: true })).toBeVisible();
  await expect(page.locator('main .headline').first()).toContainText(/\d/, { timeout: 20_000 });
  await expect(page.getByRole('alert')).toHaveCount(0);
  if (SHOTS) await page.screenshot({ path: `${SHOTS}/hand-tried.png` });
});
