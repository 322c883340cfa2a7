import { expect, test } from '@playwright/test';
import { looksRight } from './axe';

const LINES = [
  'date,alkalinity (dKH),calcium (mg/L),pH,phosphate (mg/L PO4),nitrate (mg/L)',
  '2026-06-20T10:00,8.4,,,,',
  '2026-09-02T10:00,8.3,430,8.2,0.03,5',
  '2026-09-12T10:00,8.1,426,,0.08,',
  '2026-09-20T10:00,8.2,371,8.1,0.05,8',
].join('\n');

test('the month shows what was read, one quantity at a time, by press and by key', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/#log');
  await page.locator('#paste-lines summary').click();
  await page.getByLabel('Lines to read').fill(LINES);
  await page.getByRole('button', { name: 'Read these lines' }).click();
  await page.getByRole('button', { name: /Take these 4 lines/ }).click();
  const month = page.locator('.month');
  const picture = month.locator('[role=img]');
  const choose = month.getByRole('toolbar', { name: 'Show on the month' });
  // Alkalinity first, with its forecast; a quantity that nobody has read is not offered.
  await expect(picture).toHaveAccessibleName(/^Alkalinity in dKH: .* forecast/);
  await expect(choose.getByRole('button')).toHaveText([
    ...['Alkalinity', 'Calcium', 'Nitrate', 'Phosphate', 'pH'],
  ]);
  await choose.getByRole('button', { name: 'Phosphate' }).click();
  await expect(picture).toHaveAccessibleName(
    /^Phosphate in mg\/L PO₄: 3 readings, the newest 0\.05/,
  );
  await expect(month.locator('circle')).toHaveCount(3);
  // Nobody has a band for it, and no line is drawn through dots.
  await expect(month.locator('.band')).toHaveCount(0);
  await expect(month.locator('path.middle')).toHaveCount(0);
  await page.keyboard.press('ArrowLeft');
  await expect(choose.getByRole('button', { name: 'Nitrate' })).toBeFocused();
  await expect(picture).toHaveAccessibleName(/^Nitrate in mg\/L: 2 readings, the newest 8/);
  await page.keyboard.press('ArrowLeft');
  await expect(picture).toHaveAccessibleName(/^Calcium in mg\/L: 3 readings, the newest 371/);
  await expect(month.locator('.band')).toHaveCount(1);
  await expect(month.locator('circle.out')).toHaveCount(1);
  await looksRight(page, 'month', month);
});
