import { expect, test } from '@playwright/test';
import { axeFindsNothing, looks } from './axe';

test.setTimeout(180_000);

test('one drill from choice to map, and its answer taken to the bench', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.goto('/#drills');
  const headline = page.locator('.headline');
  await expect(headline).toContainText('pH peaks at');

  await test.step('a drill from the shelf tells its story, moment by moment', async () => {
    await page.getByText('Drills to start from').click();
    await page.getByRole('button', { name: 'The top-off pump sticks on at two' }).click();
    await expect(headline).toContainText('pH peaks at 9.19');
    const moments = page.locator('.moments li');
    await expect(moments.first()).toHaveText('02:00 top-off pump sticks on');
    await expect(moments.filter({ hasText: 'reservoir empty' })).toHaveText(
      '05:20 reservoir empty, pH 9.19',
    );
  });

  await test.step('a second fault may overlap, and a bad number is refused in words', async () => {
    await page.getByLabel('And at the same time').selectOption('powerCut');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await expect(page.getByRole('group', { name: 'What breaks (2)' })).toBeVisible();
    const air = page.locator('.first-hour [data-act="batteryAir"]');
    await expect(air).toContainText('Battery air pump, 2 L of air a minute: ', { timeout: 30_000 });
    await expect(air).toContainText(/oxygen below 4 mg\/L .*without it after \d/);
    await page.getByRole('button', { name: 'Leave this out' }).last().click();
    const noticed = page.getByLabel('Noticed after', { exact: true });
    await noticed.fill('lunch');
    await noticed.press('Enter');
    await expect(page.getByRole('alert')).toContainText('stays in force');
    await noticed.fill('90 min');
    await noticed.press('Enter');
    await expect(noticed).toHaveValue('1.5');
    await expect(headline).toContainText('pH peaks at 8.7');
    await noticed.fill('8');
    await noticed.press('Enter');
    await expect(headline).toContainText('pH peaks at 9.19');
  });

  await test.step('what would have kept it stands side by side, the best first', async () => {
    await page.getByRole('button', { name: 'Try what would keep it' }).click();
    const rows = page.getByRole('region', { name: 'What each would buy' }).locator('tbody tr');
    await expect(rows.first()).toContainText(/second switch .*0 instead of \d/, {
      timeout: 60_000,
    });
    await expect(rows.filter({ hasText: 'half the pump' })).toContainText(/min gained|h gained/);
  });

  await test.step('the search backwards gives a number and a map, and a trial', async () => {
    await page.getByRole('button', { name: 'Work it out' }).click();
    const answer = page.getByText(/How big may the reservoir be\? At most \d/);
    await expect(answer).toBeVisible({ timeout: 90_000 });
    const litres = Number(/At most ([\d.]+) L/.exec((await answer.textContent())!)![1]);
    // By default it keeps the keeper's own limits, not the line of harm alone, and names them.
    await expect(answer).toContainText(/which keeps: .*pH below 8\.6, .*pH below 9, /);
    expect(litres).toBeGreaterThan(0.5);
    expect(litres).toBeLessThan(5);
    await expect(page.getByRole('img', { name: /Highest pH of a full dump/ })).toBeVisible({
      timeout: 90_000,
    });
    await page.getByRole('button', { name: 'Take it as a trial' }).click();
    await page.getByRole('link', { name: 'To the bench' }).click();
    await expect(page.getByLabel('Reservoir', { exact: true })).toHaveValue(String(litres));
    await page.goBack();
  });

  await test.step('an ensemble can be stopped, and ends with quantiles and bands', async () => {
    await page.getByRole('button', { name: /^Try \d+ tanks/ }).click();
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('What is not known').click();
    await page.getByLabel('Tanks tried', { exact: true }).fill('24');
    await page.getByLabel('Tanks tried', { exact: true }).press('Enter');
    await page.getByRole('button', { name: 'Try 24 tanks' }).click();
    await expect(page.getByText(/In (none|\d+ %) of 24 tanks/)).toBeVisible({
      timeout: 60_000,
    });
  });

  await test.step('responses are set against each other', async () => {
    await page.getByRole('button', { name: 'Try the responses' }).click();
    await expect(page.getByRole('row', { name: /^aerate/ })).toBeVisible({ timeout: 60_000 });
    await expect(page.getByRole('row', { name: /^nothing/ })).toBeVisible();
  });
  await test.step('what was tested is still there after a reload', async () => {
    await page.getByRole('button', { name: '+ Battery air pump' }).click();
    const tested = page.locator('.checklist .list');
    await expect(tested).toContainText('Battery air pump: never tested');
    await page.getByRole('button', { name: 'Battery air pump: tested today' }).click();
    await expect(tested).toContainText(/Battery air pump tested \d/);
    await page.reload();
    await expect(tested).toContainText(/Battery air pump tested \d/);
  });
  expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined/);

  await test.step('the sheet for the wall is one page or two, with the own tank’s failures', async () => {
    await page.getByRole('link', { name: 'Sheet for the wall' }).click();
    const sheet = page.getByRole('article', { name: 'Sheet for the wall' });
    await expect(sheet).toContainText('Power cut', { ignoreCase: true, timeout: 60_000 });
    await expect(sheet).toContainText(/Left alone: oxygen below 4 mg\/L after \d/);
    await expect(sheet).toContainText(/Battery air pump tested \d/);
    await expect(sheet).toContainText('unplugging does not stop a siphon');
    expect(await sheet.textContent()).not.toMatch(/NaN|undefined/);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)!.length).toBeLessThanOrEqual(2);
    await page.setViewportSize({ width: 390, height: 844 });
    await axeFindsNothing(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
  await test.step('woken at night: two taps to the first act, in sight, before anything is reckoned', async () => {
    await page.goto('/#bench');
    await page.getByRole('link', { name: 'Drills' }).click();
    const first = page.locator('.first-hour .first li').first();
    const acts = [
      ['Power is out', /^Move water or air/],
      ['Too warm', /^Unplug the heater/],
      ['Too cold', /^Warm slowly/],
      ['Top-off ran on', /^Unplug the top-off/],
      ['Poured in too much', /^(Unplug the top-off|Add nothing more)/],
    ] as const;
    for (const [said, act] of acts) {
      await page.getByRole('button', { name: said }).click();
      await expect(first).toContainText(act, { timeout: 1000 });
      await expect(first).toBeInViewport();
    }
    await expect(page.locator('.first-hour')).toContainText('not of your own tank');
    const grams = page.getByLabel('Amount', { exact: true });
    await grams.fill('60');
    await grams.press('Enter');
    await page.getByRole('button', { name: 'Power is out' }).click();
    await page.getByRole('button', { name: 'Poured in too much' }).click();
    await expect(grams).toHaveValue('60');
    await expect(page.locator('.first-hour')).toContainText(
      /Reckoned with \d+ g of sodium carbonate \(soda ash\)/,
    );
    await page.getByRole('button', { name: 'Power is out' }).click();
    // What comes with the answer moves what stands below it: a press may land beside the fold.
    await expect(async () => {
      const field = page.getByLabel('Oxygen at first');
      if (!(await field.isVisible())) await page.getByText('What does your tank breathe?').click();
      await expect(field).toBeVisible({ timeout: 1000 });
    }).toPass();
    for (const [field, mgPerL] of [
      ['Oxygen at first', '6.5'],
      ['Oxygen at last', '6.4'],
    ] as const) {
      await page.getByLabel(field).fill(mgPerL);
      await page.getByLabel(field).press('Enter');
    }
    await expect(page.getByText('It breathes 0.45 mmol/L a day.')).toBeVisible();
    await axeFindsNothing(page);
  });
  expect(errors).toEqual([]);
});

for (const { width, colorScheme } of looks) {
  test(`axe finds nothing on the drills at ${width} wide, ${colorScheme}; nothing is too wide`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('/#drills');
    await expect(page.locator('.headline')).toContainText('pH peaks at');
    await page.getByRole('button', { name: 'Try the responses' }).click();
    await expect(page.getByRole('row', { name: /^aerate/ })).toBeVisible({ timeout: 60_000 });
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    await axeFindsNothing(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
  });
}
