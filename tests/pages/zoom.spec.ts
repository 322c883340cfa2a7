import { expect, test, type Page } from '@playwright/test';

test.beforeEach(async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  await page.getByLabel('Strength of the mix, slider').fill('1.2');
  await expect(page.locator('.stamp')).toBeVisible();
});

/** The marks along the time axis of every chart that shows the trial: the large one, tiles, the difference. */
const axes = (page: Page) =>
  page.locator('.chart .plot').evaluateAll((plots) =>
    plots.map((plot) =>
      [...plot.querySelectorAll('.tick[text-anchor=middle], .tick[text-anchor=end]')]
        .map((tick) => tick.textContent!.trim())
        .filter((text) => /day|:00/.test(text))
        .join(' '),
    ),
  );
const ofAll = (page: Page, what: RegExp) =>
  expect
    .poll(async () => (await axes(page)).map((axis) => what.test(axis)))
    .toEqual(Array(5).fill(true));

test('the wheel with Ctrl, keys and a pressed mouse look more nearly at all charts at once', async ({
  page,
}) => {
  const plot = page.locator('.strip .plot');
  await ofAll(page, /day 60/);
  await plot.hover({ position: { x: 300, y: 100 } });
  await page.mouse.wheel(0, 120);
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(0);
  await ofAll(page, /day 60/);
  await page.evaluate(() => scrollTo(0, 0));
  await page.keyboard.down('Control');
  for (let i = 0; i < 5; i++) await page.mouse.wheel(0, -240);
  await page.keyboard.up('Control');
  expect(await page.evaluate(() => scrollY)).toBe(0);
  await ofAll(page, /12:00|day 2\d.*day 2\d/);
  const cursor = page.getByRole('slider', { name: 'Time cursor' });
  await cursor.focus();
  await page.keyboard.press('0');
  await ofAll(page, /day 60/);
  await expect(page.getByRole('button', { name: 'Whole trial' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  for (let i = 0; i < 6; i++) await page.keyboard.press('+');
  await ofAll(page, /00/);
  await page.getByRole('button', { name: 'Whole trial' }).click();
  const box = (await plot.boundingBox())!;
  await page.mouse.move(box.x + 300, box.y + 90);
  await page.mouse.down();
  await page.mouse.move(box.x + 390, box.y + 90, { steps: 4 });
  await expect(page.locator('.strip .brush')).toBeVisible();
  await page.mouse.up();
  await expect(page.locator('.brush')).toHaveCount(0);
  await ofAll(page, /^(?!.*day [1456]0).*day 2/);
});

test('two fingers look more nearly, one moves the cursor', async ({ page }) => {
  const fingers = (type: string, ...places: readonly (readonly [number, number])[]) =>
    page.locator('.strip .plot').evaluate(
      (plot, [type, places]) => {
        const { left, top } = plot.getBoundingClientRect();
        for (const [pointerId, x] of places)
          plot.dispatchEvent(
            new PointerEvent(type, {
              ...{ pointerId, pointerType: 'touch', bubbles: true, buttons: 1 },
              ...{ clientX: left + x, clientY: top + 90 },
            }),
          );
      },
      [type, places] as const,
    );
  await fingers('pointerdown', [1, 300]);
  await fingers('pointermove', [1, 340]);
  await ofAll(page, /day 60/);
  await fingers('pointerdown', [2, 360]);
  for (const by of [40, 80, 160, 240]) await fingers('pointermove', [1, 340 - by], [2, 360 + by]);
  await fingers('pointerup', [1, 100], [2, 600]);
  await ofAll(page, /^(?!.*day 60).*(day 1|day 2|:00)/);
});

/** Button, keys and wheel each change every chart's axis. */
async function allLookNearer(page: Page, charts: number) {
  const plot = page.locator('.strip .plot').first();
  await expect(page.locator('.chart .plot')).toHaveCount(charts);
  const seen = async () => (await axes(page)).map((axis) => axis.split(' ').length + axis);
  const whole = await seen();
  const other = (than: readonly string[]) =>
    expect
      .poll(async () => (await seen()).map((axis, i) => axis !== than[i]))
      .toEqual(Array(charts).fill(true));
  await page.getByRole('button', { name: 'Nearer' }).click();
  await other(whole);
  const near = await seen();
  await page.getByRole('slider', { name: 'Time cursor' }).focus();
  await page.keyboard.press('+');
  await other(near);
  await page.keyboard.press('0');
  await other(near);
  const far = await seen();
  await plot.hover({ position: { x: 300, y: 100 } });
  await page.keyboard.down('Control');
  for (let i = 0; i < 5; i++) await page.mouse.wheel(0, -240);
  await page.keyboard.up('Control');
  await other(far);
}

test('the charts of a drill are looked at more nearly as those of the bench, all at once', async ({
  page,
}) => {
  await page.goto('/#drills');
  await allLookNearer(page, 5);
});

test('the charts of a lesson as well, once its answer is uncovered', async ({ page }) => {
  await page.goto('/#lessons/drip-and-stuck-pump');
  await page.getByRole('radio').first().check();
  await page.getByRole('button', { name: 'Show what happens' }).click();
  await allLookNearer(page, 2);
});
