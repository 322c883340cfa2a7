import { expect, test, type Page } from '@playwright/test';

async function choose(page: Page, choices: Record<string, string>) {
  await page.goto('/#display');
  for (const [label, option] of Object.entries(choices))
    await page.getByLabel(label, { exact: true }).selectOption(option);
  await page.goto('/#bench');
  await expect(page.locator('.headline')).toContainText('after 60 days');
}

test('units and decimal sign of one’s own reach inputs, verdict and charts, and stay', async ({
  page,
}) => {
  await choose(page, { Alkalinity: 'meq/L', Volume: 'US gal', Salinity: 'SG', Decimals: 'comma' });
  const volume = page.getByLabel('Net water volume', { exact: true });
  const alkalinity = page.getByLabel('Alkalinity', { exact: true }).first();
  const seen = async () => {
    await expect(volume).toHaveValue('79,3');
    await expect(alkalinity).toHaveValue('3,03');
    await expect(page.locator('.headline')).toContainText(/\d,\d\d meq\/L after 60 days/);
    await expect(page.locator('.headline')).not.toContainText('dKH');
    const chart = page.getByRole('img', { name: /^Alkalinity over time/ });
    await expect(chart).toHaveAccessibleName(/Trial A \d,\d{3} meq\/L/);
    // 7–11 dKH: one note does not speak in two units.
    await expect(page.getByText('leave 2,5–3,92')).toBeVisible();
  };
  await seen();
  await page.reload();
  await seen();
  await volume.fill('100');
  await volume.press('Enter');
  await expect(volume).toHaveValue('100,0');
  await volume.fill('400 L');
  await volume.press('Enter');
  await expect(volume).toHaveValue('105,7');
  await alkalinity.fill('3,032');
  await alkalinity.press('Enter');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await alkalinity.fill('30');
  await alkalinity.press('Enter');
  await expect(page.getByRole('alert')).toContainText('30 is outside 0,18 to 10,70 meq/L');
  await choose(page, { Volume: 'L' });
  await expect(volume).toHaveValue('400');
});

test('a lesson speaks in the units of the reader too', async ({ page }) => {
  await choose(page, { Alkalinity: 'meq/L', Volume: 'US gal' });
  await page.goto('/#lessons/why-it-falls');
  await expect(page.locator('.setting')).toContainText(/79\.3 US gal starts at 3\.032 meq\/L/);
  await expect(page.locator('.setting')).not.toContainText('dKH');
});

test('a browser that refuses storage shows the usual and goes on', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.getItem = () => {
      throw new Error('refused');
    };
    Storage.prototype.setItem = () => {
      throw new Error('refused');
    };
  });
  await choose(page, { Volume: 'US gal' });
  await expect(page.getByLabel('Net water volume', { exact: true })).toHaveValue(
    '79,3'.replace(',', '.'),
  );
});

test('a reading is typed and listed in the units of the reader, and a unit chosen beside it stays', async ({
  page,
}) => {
  await choose(page, { Alkalinity: 'meq/L', Temperature: '°F', Decimals: 'comma' });
  await page.goto('/#log');
  await expect(page.getByText('Two tests 4,2 days apart')).toBeVisible();
  const dkh = page.getByLabel('Alkalinity', { exact: true });
  await expect(page.getByLabel('Unit of Alkalinity')).toHaveValue('meq/L');
  await page.getByText('Another time, other readings').first().click();
  await page.getByLabel('Temperature', { exact: true }).fill('77');
  await page.getByLabel('Poured in', { exact: true }).selectOption('sodium bicarbonate');
  await page.getByLabel('Amount poured in').fill('3');
  await dkh.fill('3');
  await dkh.press('Enter');
  const row = page.getByRole('row', { name: /77,0 °F/ });
  await expect(row).toContainText('3,000');
  await expect(row).toContainText('3 g sodium bicarbonate');
  await expect(page.getByRole('columnheader', { name: 'meq/L' })).toBeVisible();
  await page.getByLabel('Unit of Alkalinity').first().selectOption('mg/L CaCO₃');
  await page.reload();
  await expect(page.getByLabel('Unit of Alkalinity')).toHaveValue('mg/L CaCO₃');
});
