import { expect, test, type Page } from '@playwright/test';
import { looksRight } from './axe';
import { enterTests, openPlace, tankInTheLog } from './logged';

const SHOTS = process.env.SHOTS;
const TESTS = ['8.4', '8.3', '8.4', '8.2', '8.3', '8.2'];

/** A tank on limewater, and tests that show it nearly steady. */
async function limewaterTank(page: Page) {
  await tankInTheLog(page, 'limewater in the top-off');
  await enterTests(page, TESTS);
}

test('days away, and the sitter’s sheet', async ({ page }) => {
  test.setTimeout(120_000);
  await limewaterTank(page);
  const away = page.locator('section.away');
  await openPlace(page, 'Away');
  const days = away.getByLabel('Away for, days');
  await days.fill('many');
  await days.press('Enter');
  await expect(away.getByRole('alert')).toBeVisible();
  await days.fill('8');
  await away.getByLabel('Somebody comes every, days').fill('3');
  await away.getByRole('button', { name: 'Leave it alone' }).click();
  await expect(away.locator('.headline')).toContainText(/8 days/, { timeout: 30_000 });
  await expect(away).toContainText(/Worst while nobody looks: .+ in the first night/, {
    timeout: 30_000,
  });
  await expect(away.locator('table')).toContainText('top-off reservoir');
  const litresLeft = await away.innerText();
  for (const fold of await away.locator('details summary').all()) await fold.click();
  await looksRight(page, 'away', away);
  await away.getByRole('link', { name: 'The sitter’s sheet' }).click();
  const sheet = page.getByRole('article', { name: 'The sitter’s sheet' });
  await expect(sheet).toContainText(/no more than [\d.]+ L at a visit/, { timeout: 60_000 });
  await expect(sheet).toContainText('Look, each time you come');
  await expect(sheet).toContainText('Unplug its pump with dry hands');
  await expect(sheet).toContainText('People first.');
  await looksRight(page, 'sitter', sheet);
  // The litres of the headline are the marks of the sheet.
  const mark = /leave ([\d.]+) L/.exec(litresLeft)![1]!;
  await expect(sheet).toContainText(`(${mark} L)`);
  expect(await pagesPrinted(page)).toBe(1);
  // Both numbers are the tank's, and still there.
  await page.getByRole('link', { name: 'Back to the log' }).click();
  await page.reload();
  await expect(days).toHaveValue('8');
  await expect(away.getByLabel('Somebody comes every, days')).toHaveValue('3');
});

/** Sheets of paper that the page prints on. */
async function pagesPrinted(page: Page): Promise<number> {
  const pdf = await page.pdf({
    preferCSSPageSize: true,
    ...(SHOTS && { path: `${SHOTS}/sitter.pdf` }),
  });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)!.length;
}

test('where nobody comes the sheet is for whoever is called, and names what is not kept and when', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await limewaterTank(page);
  await page.goto('/#sitter/30/0');
  const sheet = page.getByRole('article', { name: 'The sitter’s sheet' });
  await expect(sheet).toContainText('Nobody comes unless they are called', { timeout: 60_000 });
  await expect(sheet).not.toContainText(/each time you come|at a visit|You come/);
  await expect(sheet).not.toContainText(/[Tt]est alkalinity|[Mm]easure/);
  await expect(sheet).toContainText(
    /Keeper: not kept from \d+ \w+ \d{4} on: [^]+ (below|above) [\d.]+/,
  );
  await looksRight(page, 'sitter-called', page.locator('article.wall-sheet'));
  expect(await pagesPrinted(page)).toBe(1);
});

test('an address with no such days says what it expects', async ({ page }) => {
  await page.goto('/#sitter/none');
  await expect(page.getByRole('alert')).toContainText('expected whole days from 1 to 60');
  await page.goto('/#sitter');
  await expect(page.getByRole('alert')).toContainText('got nothing; expected whole days');
});
