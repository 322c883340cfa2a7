import { expect, test } from '@playwright/test';
import { looksRight } from './axe';
import { pasteLines } from './logged';

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
  await pasteLines(page, LINES);
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

test('the log is looked at as a month or as a whole, and more nearly by wheel, mouse, keys and fingers', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/#log');
  await pasteLines(page, LINES);
  await page.evaluate(() => scrollTo(0, 0));
  const picture = page.locator('.month [role=img]');
  const shows = (what: RegExp) => expect(picture).toHaveAccessibleName(what);
  await shows(/3 readings, and the forecast .* 2 September 2026 – 4 October 2026/);
  const all = page.getByRole('button', { name: 'All', exact: true });
  const stands = (await all.boundingBox())!;
  await all.click();
  // What was read before the fit begins is seen as well.
  await shows(/4 readings, .* 20 June 2026 – 4 October 2026/);
  await expect(all).toHaveAttribute('aria-pressed', 'true');
  await picture.hover({ position: { x: 300, y: 100 } });
  await page.keyboard.down('Control');
  for (let i = 0; i < 5; i++) await page.mouse.wheel(0, -240);
  await page.keyboard.up('Control');
  await shows(/ · (\d+ \w+) 2026 – ((?!\1)\d+ \w+) 2026/);
  await expect(picture).toContainText(/12:00|00:00/);
  const cursor = page.getByRole('slider', { name: 'Time cursor' });
  await cursor.focus();
  await page.keyboard.press('0');
  await shows(/20 June 2026 – 4 October 2026/);
  await page.keyboard.press('Home');
  await expect(cursor).toHaveAttribute('aria-valuetext', '20 June, 10:00: 8.4 dKH');
  await page.keyboard.press('+');
  await shows(/20 June 2026 – 12 August 2026/);
  // The days go along with the hour that is read.
  await page.keyboard.press('End');
  await shows(/12 August 2026 – 4 October 2026/);
  const { x, y } = (await picture.boundingBox())!;
  await page.mouse.move(x + 50, y + 90);
  await page.mouse.down();
  await page.mouse.move(x + 150, y + 90, { steps: 4 });
  await page.mouse.up();
  await shows(/1\d August 2026 – 2\d August 2026/);
  await page.getByRole('button', { name: 'Month', exact: true }).click();
  await picture.evaluate((plot) => {
    const { left } = plot.getBoundingClientRect();
    const finger = (type: string, pointerId: number, x: number) =>
      plot.dispatchEvent(
        new PointerEvent(type, {
          pointerId,
          pointerType: 'touch',
          clientX: left + x,
          bubbles: true,
        }),
      );
    finger('pointerdown', 1, 280);
    finger('pointerdown', 2, 320);
    for (const by of [40, 80]) {
      finger('pointermove', 1, 280 - by);
      finger('pointermove', 2, 320 + by);
    }
    finger('pointerup', 1, 200);
    finger('pointerup', 2, 400);
  });
  await shows(/ · 4 September 2026 – 13 September 2026/);
  expect((await all.boundingBox())!).toEqual(stands);
});
