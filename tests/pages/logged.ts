import { expect, type Page } from '@playwright/test';

/** A tank of 300 L in the three answers of the first minute, then the log. */
export async function tankInTheLog(page: Page, brings: string): Promise<void> {
  await page.goto('/#bench');
  await page.getByLabel('How much water, without rock?').fill('300');
  await page.getByLabel('What brings alkalinity now?').selectOption({ label: brings });
  await page.getByRole('button', { name: 'Put it on the bench' }).click();
  await page.goto('/#log');
}

/** A place of the log, as its row of links names it. */
export async function openPlace(page: Page, title: string, row = 'Parts of the log') {
  const places = page.getByRole('navigation', { name: row });
  await places.getByRole('link', { name: title, exact: true }).click();
}

/** Readings of alkalinity on the log, a day apart from the first of March, of which the last is today's. */
export async function enterTests(page: Page, tests: readonly string[]): Promise<void> {
  await page.clock.setFixedTime(`2026-03-0${tests.length}T18:00`);
  const when = page.getByLabel('When', { exact: true });
  if (!(await when.isVisible())) {
    await page.getByText('Another time, other readings').first().click();
  }
  const dkh = page.getByLabel('Alkalinity', { exact: true }).first();
  for (const [i, value] of tests.entries()) {
    await dkh.fill(value);
    await when.fill(`2026-03-0${i + 1}T10:30`);
    await dkh.press('Enter');
    await expect(dkh).toHaveValue('');
  }
}

/** Lines pasted into the log and taken. */
export async function pasteLines(page: Page, lines: string): Promise<void> {
  await page.locator('#paste-lines summary').click();
  await page.getByLabel('Lines to read').fill(lines);
  await page.getByRole('button', { name: 'Read these lines' }).click();
  await page.getByRole('button', { name: /Take (this line|these)/ }).click();
}
