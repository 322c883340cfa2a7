import { expect, test, type Page } from '@playwright/test';
import { enterTests, tankInTheLog } from './logged';

const sizes = [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
];
const pages = ['bench', 'log', 'log/plan', 'drills', 'lessons', 'lessons/why-it-falls', 'words'];

interface Shift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
  readonly sources: readonly { node?: Node; previousRect: DOMRect; currentRect: DOMRect }[];
}

/** What may move by itself, as browsers add it up: a tenth of what they call good. */
const MOST = 0.01;

/** Opens a page anew and adds up what moved on it until its answers stand and for a while after; each move is named. */
async function moved(page: Page, place: string): Promise<{ total: number; moves: string[] }> {
  await page.goto('about:blank');
  await page.goto(`/#${place}`);
  await expect(page.locator('main')).toBeVisible();
  await expect(page.locator('[aria-busy=true]')).toHaveCount(0);
  if (/bench|drills/.test(place)) await expect(page.locator('.headline')).toContainText(/dKH|pH/);
  await page.waitForTimeout(600);
  return page.evaluate(async () => {
    const moves: string[] = [];
    let total = 0;
    const add = (entries: readonly PerformanceEntry[]) => {
      for (const { value, hadRecentInput, sources } of entries as readonly Shift[]) {
        if (hadRecentInput) continue;
        total += value;
        for (const { node, previousRect, currentRect } of sources) {
          const name = (node as Element | undefined)?.className ?? node?.textContent;
          moves.push(`${name}: ${previousRect.y} to ${currentRect.y}`);
        }
      }
    };
    new PerformanceObserver((list) => add(list.getEntries())).observe({
      ...{ type: 'layout-shift', buffered: true },
    });
    await new Promise((heard) => setTimeout(heard, 100));
    return { total, moves };
  });
}

for (const viewport of sizes) {
  test(`nothing moves by itself on any page at ${viewport.width} wide, on a first visit and with a tank`, async ({
    page,
  }) => {
    await page.setViewportSize(viewport);
    const all = async (visit: string, places: readonly string[]) => {
      for (const place of places) {
        const { total, moves } = await moved(page, place);
        expect.soft(total, `${visit}, ${place}: ${moves.join('; ')}`).toBeLessThan(MOST);
      }
    };
    await all('first visit', [...pages, 'display', 'wall', 'sitter']);
    await tankInTheLog(page, 'limewater in the top-off');
    await enterTests(page, ['8.4', '8.1', '7.8']);
    await expect(page.locator('.headline').first()).toContainText('dKH a day');
    await all('with a tank', ['bench', 'log', 'drills', 'tanks']);
  });
}

test('where a tank may be comes without a line being drawn anew', async ({ page }) => {
  await page.addInitScript(() => {
    const told = { lines: 0, before: -1 };
    Object.assign(globalThis, { told });
    const { setTransform } = CanvasRenderingContext2D.prototype;
    CanvasRenderingContext2D.prototype.setTransform = function (...places: unknown[]) {
      told.lines += 1;
      Reflect.apply(setTransform, this, places);
    };
    new MutationObserver(() => {
      if (told.before < 0 && document.querySelector('.strip .cut')) told.before = told.lines;
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto('/');
  await expect(page.locator('.strip .note')).toHaveCount(2);
  const { lines, before } = await page.evaluate(
    () => (globalThis as unknown as { told: { lines: number; before: number } }).told,
  );
  expect(before).toBeGreaterThan(0);
  expect(lines).toBe(before);
});

test('while the answer to another failure comes its room is as large as that of the answer before', async ({
  page,
}) => {
  await page.goto('/#drills');
  await expect(page.locator('.headline').first()).toContainText(/pH/);
  await expect(page.locator('.strip .plot')).toBeVisible();
  const before = await page.locator('.rest').evaluate((rest) => {
    const heights: number[] = [];
    Object.assign(globalThis, { heights });
    new MutationObserver(() => {
      if (rest.classList.contains('coming')) heights.push(rest.clientHeight);
    }).observe(rest, { attributes: true, childList: true, subtree: true });
    return rest.clientHeight;
  });
  await page.getByRole('button', { name: 'Power is out' }).click();
  await expect(page.locator('.rest.coming')).toHaveCount(0);
  const heights = await page.evaluate(
    () => (globalThis as unknown as { heights: number[] }).heights,
  );
  expect(heights.length).toBeGreaterThan(0);
  expect(heights).toEqual(heights.map(() => before));
});
