import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { axeFindsNothing, looks } from './axe';
import { enterTests, openPlace, pasteLines } from './logged';

const SIX = ['8.4', '8.1', '8,2', '7.8', '7.7', '7.5'];

/** Six readings, a day apart. */
async function enterSix(page: Page) {
  await page.goto('/#log');
  await enterTests(page, SIX);
}

const headline = (page: Page) => page.locator('main .headline').first();

test('six readings go in, consumption and its uncertainty come out, and all stays', async ({
  page,
}) => {
  await enterSix(page);
  await expect(headline(page)).toContainText(
    /The tank uses \d\.\d\d ± 0\.\d\d dKH a day on 6 March/,
  );
  await expect(
    page.getByText(/Test next on \d+ March|by \d+ March|known to ±0.1/).first(),
  ).toBeVisible();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(6);
  await page.getByRole('button', { name: 'Delete 6 March, 10:30' }).click();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(5);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Edit 5 March, 10:30' }).click();
  await page.getByLabel('Alkalinity', { exact: true }).nth(1).fill('7.75');
  await page.getByRole('button', { name: 'Keep the change' }).click();
  // What is being typed stays while another page is looked at.
  const dkh = page.getByLabel('Alkalinity', { exact: true }).first();
  await dkh.fill('7.9');
  await page.goto('/#bench');
  await expect(page.locator('.headline')).toContainText('dKH');
  await page.goto('/#log');
  await expect(dkh).toHaveValue('7.9');
  await page.reload();
  await expect(page.getByRole('row', { name: /March, 10:30/ })).toHaveCount(6);
  await expect(page.getByRole('row', { name: /5 March/ })).toContainText('7.75');
});

test('what was poured in yesterday is poured in again by one press, and not twice', async ({
  page,
}) => {
  await page.clock.setFixedTime('2026-03-02T19:10');
  await page.goto('/#log');
  await pasteLines(page, 'date,additive,grams\n2026-03-01T19:00,sodium bicarbonate,3');
  const again = page.getByRole('button', { name: '3 g sodium bicarbonate, again' });
  await again.click();
  const line = page.getByRole('row', { name: /2 March, 19:10/ });
  await expect(line).toContainText('3 g sodium bicarbonate');
  await expect(again).toHaveCount(0);
  await expect(page.getByText('Taken, 2 March, 19:10.')).toBeFocused();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(line).toHaveCount(0);
  await expect(again).toBeVisible();
});

for (const { width, colorScheme } of looks) {
  test(`axe finds nothing on the log at ${width} wide, ${colorScheme}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await enterSix(page);
    await expect(headline(page)).toContainText(/The tank uses.* on 6 March/);
    await expect(headline(page).locator('.stamp')).toContainText('leave');
    // However much of the form is open, answer and month are in the first fold, the answer first.
    await page.evaluate(() => scrollTo(0, 0));
    const [said, month] = await Promise.all([
      headline(page).boundingBox(),
      page.locator('.month svg').boundingBox(),
    ]);
    expect(month!.y + month!.height).toBeLessThan(0.7 * 900);
    if (width < 1000) expect(said!.y).toBeLessThan(month!.y);
    await openPlace(page, 'Plans');
    await page.getByRole('button', { name: 'Work out three plans' }).click();
    await page.getByRole('button', { name: 'Make the card' }).first().click({ timeout: 30_000 });
    await expect(page.locator('.dose-card .on-paper svg')).toHaveAccessibleName(
      /light on: .* dKH, pH/,
    );
    await page.getByRole('button', { name: 'Another tank' }).click();
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    await axeFindsNothing(page);
    for (const place of ['The log', 'Away', 'Season', 'Stock', 'How it is read', 'Plans']) {
      await openPlace(page, place);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, place).toBeLessThanOrEqual(width);
    }
  });
}

test('a place of the log has its own address, and what is not shown is still found', async ({
  page,
}) => {
  await page.goto('/#log');
  const away = page.getByLabel('Away for, days');
  await expect(away).toBeHidden();
  await openPlace(page, 'Away');
  await expect(away).toBeVisible();
  await page.reload();
  await expect(away).toBeVisible();
  await page.getByRole('button', { name: 'Paste several lines' }).click();
  await expect(page.getByLabel('Lines to read')).toBeFocused();
  await page.goBack();
  await expect(away).toBeVisible();
  // As the browser’s own search does where it finds a word.
  await page.getByText('Know the consumption').dispatchEvent('beforematch', { bubbles: true });
  await expect(page.getByText('Know the consumption')).toBeVisible();
  await expect(away).toBeHidden();
});

test('a plan is worked out, taken to the bench, and printed as one page', async ({ page }) => {
  await enterSix(page);
  await expect(headline(page)).toContainText(/The tank uses.* on 6 March/);
  await openPlace(page, 'Plans');
  const work = page.getByRole('button', { name: 'Work out three plans' });
  const columns = page.locator('article', {
    has: page.getByRole('button', { name: 'Take to the bench' }),
  });
  await work.click();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(work).toBeEnabled();
  await expect(columns).toHaveCount(0);
  await work.click();
  await expect(columns).toHaveCount(3, { timeout: 30_000 });
  await expect(
    page.getByText(/^Start the plan’s dosing today\. Besides it, from 7\.\d to 8\.5 dKH/),
  ).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Make the card' }).first().click();
  const card = page.getByRole('article', { name: 'Dose card' });
  await expect(card.getByRole('heading', { name: /Dose card/ })).toBeInViewport();
  await expect(page.getByRole('button', { name: 'Print the card' })).toBeFocused();
  await expect(card).toContainText('inside 7–11');
  await expect(card).toContainText('A test above 11 dKH');
  await expect(card).toContainText(/No power, nobody moving air: oxygen below 4 mg\/L after \d/, {
    timeout: 30_000,
  });
  const isOnePage = async () => {
    for (const [paper, box] of [
      ['A5', 'MediaBox [0 0 420 '],
      ['letter', 'MediaBox [0 0 612 792]'],
    ] as const) {
      await page.getByLabel('Paper').selectOption({ label: paper });
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      expect(pdf).toContain(box);
      expect(/\/Count (\d+)/.exec(pdf)![1], paper).toBe('1');
    }
  };
  await isOnePage();
  await axeFindsNothing(page);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the card as a file' }).click(),
  ]);
  const html = readFileSync(await file.path(), 'utf8');
  expect(html).toContain('A test above 11 dKH');
  expect(html).toContain('@page card-a5');
  expect(html).not.toMatch(/src=|href=/);
  // Two bottles have more to say than a reservoir.
  await page.getByRole('button', { name: 'Get there with this' }).nth(1).click();
  await page.getByRole('button', { name: 'Make the card' }).nth(1).click();
  await expect(card).toContainText('Never more than');
  await isOnePage();
  await columns.nth(1).getByRole('button', { name: 'Take to the bench' }).click();
  await expect(page.locator('.headline').first()).toContainText('Two-part pumps, 8.5 dKH');
});

test('the bench offers the newest reading, and a plan is rehearsed at its worst hour', async ({
  page,
}) => {
  await enterSix(page);
  await page.getByRole('link', { name: 'Bench', exact: true }).click();
  const note = page.getByText(
    /Trial A and its stamp go from 8\.5 dKH as typed; read 7\.5 on 6 March\./,
  );
  await expect(note).toBeVisible();
  // Beside the stamp, and above the chart.
  const [stamp, offered, chart] = await Promise.all([
    page.locator('.headline').boundingBox(),
    note.boundingBox(),
    page.locator('.strip .plot').boundingBox(),
  ]);
  expect(offered!.y).toBeGreaterThanOrEqual(stamp!.y);
  expect(offered!.y + offered!.height).toBeLessThanOrEqual(chart!.y);
  await page.getByRole('button', { name: 'Start from that water' }).click();
  await expect(note).toBeHidden();
  await expect(page.locator('.strip .readings')).toContainText('Trial A 7.50');
  await page.getByRole('link', { name: 'Log', exact: true }).click();
  await openPlace(page, 'Plans');
  await page.getByRole('button', { name: 'Work out three plans' }).click();
  // Taken as what the tank runs by, it is a turn of that day: dated, noted, and on the month.
  const plan = page.locator('article.chosen');
  await plan
    .getByRole('button', { name: 'My tank runs by this from now on' })
    .click({ timeout: 30_000 });
  await expect(page.getByText(/^Your tank runs by “.*” from now on/)).toBeVisible();
  await expect(page.locator('.month [role=img]')).toHaveAccessibleName(/turned/);
  await expect(page.getByText(/^Taken from now on: /)).toBeAttached();
  await page.getByRole('button', { name: 'Rehearse it' }).first().click({ timeout: 30_000 });
  await expect(page.locator('.headline')).toContainText('pH peaks at');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(page.locator('.moments')).toContainText('reservoir empty');
});

test('tanks keep their own logs and plans', async ({ page }) => {
  await enterSix(page);
  await page.getByRole('button', { name: 'Another tank' }).click();
  await page.getByLabel('Name of the new tank').fill('the north basin');
  await page.getByRole('button', { name: 'Begin its log' }).click();
  await expect(page.getByText('Nothing yet. Type today’s alkalinity above.')).toBeVisible();
  await page.getByLabel('Alkalinity', { exact: true }).first().fill('9,3');
  await page.getByRole('button', { name: 'Add to the log' }).click();
  await page.reload();
  await expect(page.getByLabel('Tank', { exact: true })).toHaveText(/the north basin/);
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(1);
  await page.getByLabel('Tank', { exact: true }).selectOption({ index: 0 });
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(6);

  await page.getByRole('button', { name: 'Remove this tank' }).click();
  await page.getByRole('button', { name: 'Yes, remove it' }).click();
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(1);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(6);
  await expect(page.getByRole('button', { name: 'Bring it back' })).toHaveCount(0);
});

test('a file of readings is previewed, then taken, and not a second time', async ({ page }) => {
  await page.goto('/#log');
  const file = {
    name: 'kitchen-table.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(
      'Date;KH;Note\n3/4/2026;8,4;\n13/4/2026;8,1;"two\nlines"\n14/4/2026;n/a;\n',
    ),
  };
  const input = page.getByLabel('Read a CSV file');
  await input.setInputFiles(file);
  await expect(page.getByText('2 lines would be taken')).toBeVisible();
  await expect(page.getByText(/^Line 5: Alkalinity: got “n\/a”/)).toBeVisible();
  await page.getByRole('button', { name: 'Take these 2 lines' }).click();
  await expect(page.getByRole('button', { name: /^Delete/ })).toHaveCount(2);
  await input.setInputFiles(file);
  await expect(page.getByText('0 lines would be taken')).toBeVisible();
  await expect(page.getByText('The same is already in the log.').first()).toBeVisible();
});

test('a reading is judged as it is entered, and a run of misses proposes a refit', async ({
  page,
}) => {
  await enterSix(page);
  await expect(headline(page)).toContainText(/The tank uses.* on 6 March/);
  await openPlace(page, 'How it is read');
  await page.getByRole('button', { name: 'Let this forecast stand' }).click();
  const dkh = page.getByLabel('Alkalinity', { exact: true }).first();
  const enter = async (day: number, value: string) => {
    await page.clock.setFixedTime(`2026-03-0${day}T18:00`);
    await dkh.fill(value);
    await page.getByLabel('When', { exact: true }).fill(`2026-03-0${day}T10:30`);
    await dkh.press('Enter');
  };
  await enter(7, '7.4');
  await expect(
    page.getByText(/^Taken, 7 March.*7\.4 where 7\.\d ± 0\.\d was expected: within noise\./),
  ).toBeVisible();
  await enter(8, '8.6');
  await expect(
    page.getByText(/far above what noise explains: test again before you act/),
  ).toBeVisible();
  await expect(page.getByText(/keep straying/)).toHaveCount(0);
  await enter(9, '8.7');
  await expect(page.getByText(/keep straying to one side/)).toBeVisible();
  await page.getByRole('button', { name: 'Fit all readings again' }).first().click();
  await expect(headline(page)).toContainText('on 9 March');
});
