import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { axeFindsNothing } from './axe';

test('the drawn tank follows the time cursor, is played and stepped, and is read aloud', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/#bench');
  await page.getByRole('button', { name: 'Skip, I know my way' }).click();
  const drawn = page.getByRole('img', { name: /light off: .* dKH, pH/ });
  await expect(drawn).toBeVisible();
  await page.getByRole('button', { name: 'An hour on' }).click();
  await expect(page.locator('.cursor output').first()).toHaveText('day 1, 01:00');
  await expect(page.locator('.spoken')).toContainText('Day 1, 01:00');
  await page.getByRole('button', { name: 'Play' }).click();
  await expect(page.locator('.spoken')).toContainText('light on');
  await page.getByRole('button', { name: 'Pause' }).click();
  const spoken = await page.locator('.spoken').textContent();
  await expect(page.getByRole('img', { name: spoken! })).toBeVisible();
  await axeFindsNothing(page);
});

test('it stands still where motion is unwanted, and is folded on a phone', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/#bench');
  await page.getByText('The tank, drawn').click();
  await expect(page.getByRole('button', { name: 'An hour on' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Play' })).toHaveCount(0);
});

test('the picture to share carries verdict, stamp, numbers, tank and chart, and nothing of it is cut', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto('/#bench');
  const stamp = page.locator('.headline .stamp');
  await expect(stamp).toContainText('outside from day');
  const reasons = await page.locator('.details li').allInnerTexts();
  const saved = async (name: string) => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name }).click(),
    ]);
    return file;
  };
  expect((await saved('Picture to share')).suggestedFilename()).toBe('trial-a.png');
  const svg = readFileSync(await (await saved('The same as SVG')).path(), 'utf8');
  const seen = await page.evaluate((text) => {
    const read = new DOMParser().parseFromString(text, 'image/svg+xml');
    const shown = document.body.appendChild(document.importNode(read.documentElement, true));
    const picture = shown.getBoundingClientRect();
    const texts = [...shown.querySelectorAll('text')].map((one) => ({
      text: one.textContent ?? '',
      left: one.getBoundingClientRect().left - picture.left,
      right: one.getBoundingClientRect().right - picture.left,
      bottom: one.getBoundingClientRect().bottom - picture.top,
    }));
    const told = {
      ...{ title: shown.querySelector('title')!.textContent, width: picture.width, texts },
      ...{ spoken: shown.querySelector('desc')!.textContent, height: picture.height },
      fills: [...shown.querySelectorAll('[fill]')].map((one) => one.getAttribute('fill')!),
    };
    shown.remove();
    return told;
  }, svg);
  expect(seen.title).toContain('Falls below 7 dKH');
  expect(seen.spoken).toContain('light off');
  const words = seen.texts.map(({ text }) => text).join(' ');
  expect(words).toContain(await stamp.innerText());
  for (const reason of reasons) expect(words).toContain(reason.split(' ').slice(0, 3).join(' '));
  for (const { text, left, right, bottom } of seen.texts) {
    expect(left, text).toBeGreaterThanOrEqual(0);
    expect(right, text).toBeLessThanOrEqual(seen.width);
    expect(bottom, text).toBeLessThanOrEqual(seen.height);
  }
  // Paper, though the page is dark; and colours that any reader of SVG knows.
  expect(seen.fills).toContain('rgb(223, 234, 223)');
  expect(seen.fills.filter((fill) => /oklab|light-dark|var\(/.test(fill))).toEqual([]);
});
