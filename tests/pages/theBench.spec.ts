import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { SCENARIO_VERSION } from '../../shared/scenario/schema';

// As a browser has it, with what is kept for offline.
test.use({ serviceWorkers: 'allow' });

const strength = (page: Page) => page.getByLabel('Strength of the mix', { exact: true });
const headline = (page: Page) => page.locator('.headline');

/** Opens the page and fails the test on any console error, CSP violations among them. */
async function open(page: Page) {
  const errors: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto('/');
  await expect(headline(page)).toContainText('after 60 days');
  return errors;
}

/** What a chart of the selected trial holds, read off its picture. */
const pixels = (page: Page) =>
  page
    .locator('canvas')
    .first()
    .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());

test('the whole job: drag, read, keep, compare, export, reload, all still there', async ({
  page,
}) => {
  const errors = await open(page);
  await test.step('dragging the strength changes verdict and chart of that trial only', async () => {
    const before = await pixels(page);
    const slider = page.getByLabel('Strength of the mix, slider');
    await slider.focus();
    for (let i = 0; i < 25; i++) await slider.press('ArrowRight');
    await expect(strength(page)).toHaveValue('1.15');
    await expect(headline(page)).toContainText('Trial A');
    await expect(headline(page)).toContainText('holds');
    await expect(page.locator('.other')).toContainText("Today's plan");
    await expect(page.locator('.other')).toContainText('falls below 7');
    expect(await pixels(page)).not.toBe(before);
  });
  await test.step('keeping it starts another trial beside it', async () => {
    await page.getByRole('button', { name: 'Keep, and try another' }).click();
    await expect(page.getByRole('button', { name: 'Trial B', exact: true })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await strength(page).fill('0,6');
    await strength(page).press('Enter');
    await expect(headline(page)).toContainText('Trial B');
    await expect(headline(page)).toContainText('falls below 7');
  });
  await test.step('what differs is listed plainly', async () => {
    const row = page.getByRole('row', { name: /Strength of the mix/ });
    await expect(row).toContainText('0.9 g/L');
    await expect(row).toContainText('0.6 g/L');
  });
  await test.step('the trial goes out as a scenario and as CSV', async () => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save Trial B as a file' }).click(),
    ]);
    const scenario = JSON.parse(readFileSync(await file.path(), 'utf8'));
    expect(scenario).toMatchObject({ version: SCENARIO_VERSION, topOff: { gramsPerL: 0.6 } });
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Hourly numbers as CSV' }).click(),
    ]);
    const lines = readFileSync(await csv.path(), 'utf8')
      .trim()
      .split('\n');
    expect(lines[0]).toMatch(/^time_h,alkalinity_dkh,ph_nbs,/);
    expect(lines).toHaveLength(60 * 24 + 2);
  });
  await test.step('after a reload everything is still there', async () => {
    await page.waitForTimeout(500);
    await page.reload();
    await expect(headline(page)).toContainText('Trial B');
    await expect(strength(page)).toHaveValue('0.60');
    await expect(page.getByRole('button', { name: 'Trial A', exact: true })).toBeVisible();
    await expect(page.locator('.other')).toHaveCount(2);
  });
  expect(errors).toEqual([]);
});

test('undo and redo walk through the edits, a drag being one', async ({ page }) => {
  await open(page);
  const slider = page.getByLabel('Strength of the mix, slider');
  await slider.fill('1.2');
  await expect(strength(page)).toHaveValue('1.20');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(strength(page)).toHaveValue('0.90');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(strength(page)).toHaveValue('1.20');
});

test('plans that are the same are run once between them', async ({ page }) => {
  await open(page);
  const runs = () => page.evaluate(() => performance.getEntriesByName('trial').length);
  const trials = page.getByRole('region', { name: 'Verdict' });
  await expect(trials).not.toContainText('is being worked out');
  expect(await runs()).toBe(1);
  await page.getByRole('button', { name: 'Keep, and try another' }).click();
  await expect(trials).toContainText('Trial B');
  await expect(trials).not.toContainText('is being worked out');
  expect(await runs()).toBe(1);
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await expect.poll(runs).toBe(2);
  await expect(trials.locator('.headline')).toContainText(/inside 7–11 so far/);
});

test('a typed quantity is read in any unit, and a bad one is kept and explained', async ({
  page,
}) => {
  await open(page);
  const volume = page.getByLabel('Net water volume', { exact: true });
  await volume.fill('80 gal');
  await volume.press('Enter');
  await expect(volume).toHaveValue('302.833');
  await volume.fill('12 kg');
  await volume.press('Enter');
  await expect(page.getByRole('alert')).toContainText('“kg” cannot be turned into L');
  await expect(volume).toHaveValue('12 kg');
  await volume.fill('-5');
  await volume.press('Enter');
  await expect(page.getByRole('alert')).toContainText('outside 5 to 50000 L');
  await volume.press('Escape');
  await expect(volume).toHaveValue('302.833');
});

test('a bad file is refused with every problem, and the bench stays as it was', async ({
  page,
}) => {
  await open(page);
  const before = await headline(page).textContent();
  const bad = {
    type: 'paper-reef/scenario',
    version: 2,
    title: 'bad',
    days: 1e9,
    tank: { volumeGal: 80, alkalinityDkh: 8, salinityPractical: 1.026 },
  };
  await page.locator('input[type=file]').setInputFiles({
    name: 'bad.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(bad)),
  });
  const complaints = page.locator('.complaints');
  await expect(complaints).toContainText('bad.json was not opened');
  await expect(complaints).toContainText("Did you mean 'volumeL', a number in L?");
  await expect(complaints).toContainText('specific gravity');
  await expect(complaints).toContainText('days (Length of the trial): got 1000000000');
  expect(await headline(page).textContent()).toBe(before);
});

test('kLa and photosynthesis are solved from pH by day and night', async ({ page }) => {
  await open(page);
  await page.getByText('Air and light').click();
  await page.getByRole('button', { name: /Solve kLa/ }).click();
  await expect(page.getByText(/per hour and .* give pH 7\.\d\d at lights-on/)).toBeVisible();
  await expect(page.getByLabel('kLa of CO₂', { exact: true })).not.toHaveValue('2.00');
});

test('a pH above 9.5 is shown as >9.5 and never as a number', async ({ page }) => {
  await open(page);
  await page.getByText('One-off additions').click();
  await page.getByRole('button', { name: 'Add a one-off addition' }).click();
  await page.getByLabel('Substance').selectOption('calciumHydroxide');
  const grams = page.getByLabel('Amount', { exact: true });
  await grams.fill('60');
  await grams.press('Enter');
  await expect(headline(page)).toContainText('pH peaks at >9.5');
  await expect(page.locator('.details')).toContainText('beyond the constants’ range');
  await page.getByRole('slider', { name: 'Time cursor' }).fill('11');
  await expect(page.getByRole('img', { name: /^pH over time/ })).toHaveAccessibleName(/>9\.5/);
});
