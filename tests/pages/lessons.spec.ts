import { expect, test, type Page } from '@playwright/test';
import { valueAt } from '../../shared/scenario/change';
import { quantityAt } from '../../shared/scenario/fields';
import { statedAt } from '../../src/lessons/fill';
import { lessonList } from '../../src/lessons/lessonList';
import { runsAt } from '../runs/lessons/runsAt';
import { axeFindsNothing, looks } from './axe';
import { outOfSight, sizes } from './sight';

async function toTheEnd(page: Page, right: string) {
  await page.getByLabel(right).check();
  await page.getByRole('button', { name: 'Show what happens' }).click();
  await expect(page.getByRole('heading', { name: 'As you predicted' })).toBeFocused();
  await page.getByRole('button', { name: 'Show the answer' }).click();
  await expect(page.getByRole('heading', { name: 'Why', exact: true })).toBeVisible();
}

for (const lesson of lessonList) {
  test(`"${lesson.title}" runs to its end, and states what the engine gives`, async ({ page }) => {
    const errors: string[] = [];
    page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
    await page.goto(`/#lessons/${lesson.id}`);
    const right = lesson.predict.choices.find(({ id }) => id === lesson.predict.right)!;
    await expect(page.getByRole('radio').first()).toBeVisible();
    await toTheEnd(page, right.text.slice(0, 12));

    const { path, range, title = quantityAt(path).title } = lesson.control;
    const start = valueAt(lesson.scenario, path) as number;
    const moved = start === range[1] ? range[0] : range[1];
    await page.getByLabel(`${title}, slider`, { exact: true }).fill(String(moved));
    await expect(page.getByRole('img', { name: /light o(n|ff): .* dKH, pH/ })).toBeVisible();
    const runs = runsAt(lesson, moved);
    // Every number on the page, of the worker's runs in this browser, against the engine here.
    await expect(async () => {
      const stated = await page
        .locator('.screen data')
        .evaluateAll((all) =>
          (all as HTMLElement[]).map((one) => [one.dataset.stated!, one.innerText] as const),
        );
      expect(stated.length).toBeGreaterThan(5);
      for (const [key, text] of stated)
        expect([key, text]).toEqual([key, statedAt(key, runs).text]);
    }).toPass({ timeout: 10_000 });
    await expect(page.locator('main')).not.toContainText(/NaN|\{|undefined|Infinity/);
    expect(errors).toEqual([]);
  });
}

test('a whole lesson by keyboard alone', async ({ page }) => {
  await page.goto('/#lessons');
  await page.getByRole('link', { name: lessonList[1]!.title }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('radio').first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Show what happens' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'As you predicted' })).toBeFocused();
  const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
  const label = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
  for (let i = 0; i < 12 && !(await label()).endsWith(', slider'); i++)
    await page.keyboard.press('Tab');
  const before = await page.locator('.now').textContent();
  await page.keyboard.press('End');
  await expect(page.locator('.now')).not.toHaveText(before!);
  for (let i = 0; i < 12 && (await focused()) !== 'Show the answer'; i++)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  for (let i = 0; i < 12 && (await focused()) !== 'Open this tank on the bench'; i++)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#bench$/);
  await expect(page.locator('.question')).toContainText('Windows open, windows shut');
});

test('an unknown lesson says so and shows those there are', async ({ page }) => {
  await page.goto('/#lessons/nothing');
  await expect(page.getByRole('alert')).toContainText('There is no lesson “nothing”');
  await expect(page.getByRole('listitem')).toHaveCount(lessonList.length);
});

test('a guess is drawn before the answer, stays beside it, and the class sees it large', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(`/#lessons/${lessonList[0]!.id}`);
  const plot = page.locator('.strip .plot').first();
  const { x, y, width, height } = (await plot.boundingBox())!;
  await page.mouse.move(x + 60, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2, y + height / 3, { steps: 8 });
  await page.mouse.move(x + width - 90, y + height / 3, { steps: 8 });
  await page.mouse.up();
  await expect(plot).toHaveAccessibleName(/your guess goes from 8\.50 to 9\.\d\d/);
  await toTheEnd(page, 'Lower');
  await expect(
    page.getByText(/Your line ends at 9\.\d\d dKH; the tank at 6\.30 dKH/),
  ).toBeVisible();
  await expect(plot).toHaveAccessibleName(/at first goes from .*/);
  await page.getByRole('button', { name: 'Projector' }).click();
  await expect(page.getByRole('navigation')).toBeHidden();
  expect((await plot.boundingBox())!.height).toBeGreaterThan(400);
  // From the list there is a way on, and back to what it was.
  await page.getByRole('link', { name: 'All lessons' }).first().click();
  await expect(page.getByRole('navigation')).toBeVisible();
  const large = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  await page.keyboard.press('Escape');
  await expect(page.locator('html')).not.toHaveAttribute('data-projector');
  expect(large).toBe('24px');
});

test('the printed sheet holds a page for the class and one for the teacher', async ({ page }) => {
  await page.goto(`/#lessons/${lessonList[0]!.id}`);
  await expect(page.getByRole('radio').first()).toBeVisible();
  // What the wall shows large is printed as it always is.
  await page.getByRole('button', { name: 'Projector' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('For the teacher')).toBeVisible();
  await expect(page.getByRole('img', { name: /address of this lesson/ })).toBeVisible();
  await expect(page.locator('.sheet .kind').first()).toContainText(page.url());
  await expect(page.getByRole('button', { name: 'Show what happens' })).toBeHidden();
  for (const { id } of lessonList) {
    await page.goto(`/#lessons/${id}`);
    await expect(page.locator('.sheet .kind').first()).toContainText(page.url());
    for (const format of ['A4', 'Letter']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g), `${id} on ${format}`).toHaveLength(2);
    }
  }
});

for (const { width, colorScheme } of looks) {
  test(`axe finds nothing in the lessons at ${width} wide, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    const clean = async () => {
      await axeFindsNothing(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    };
    await page.goto('/#lessons');
    await expect(page.getByRole('heading', { name: 'Lessons' })).toBeVisible();
    await clean();
    for (const { id, predict } of lessonList) {
      await page.goto(`/#lessons/${id}`);
      await expect(page.getByRole('radio').first()).toBeVisible();
      const right = predict.choices.find((choice) => choice.id === predict.right)!;
      await toTheEnd(page, right.text.slice(0, 12));
      await clean();
      // Whatever is moved, the picture it moves is in sight.
      const plot = page.locator('.strip .plot').first();
      for (const size of sizes.filter((one) => one.width < 860 === width < 860)) {
        await page.setViewportSize(size);
        const control = page.locator('.control input[type=range]');
        expect(await outOfSight(page, control, plot), id).toEqual([]);
      }
      await page.setViewportSize({ width, height: 900 });
    }
  });
}

test('at 200 % text a lesson stays inside the screen', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await page.goto(`/#lessons/${lessonList[4]!.id}`);
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  await expect(page.getByRole('radio').first()).toBeVisible();
  await toTheEnd(page, 'pH peaks lower');
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(390);
});
