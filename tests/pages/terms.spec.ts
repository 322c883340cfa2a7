import { expect, test } from '@playwright/test';

test('a word explains itself by focus, hover and Escape, and stays on a narrow screen', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await page.goto('/#drills');
  const word = page.getByRole('button', { name: 'Rank correlation' });
  const note = page.getByRole('tooltip');
  await expect(note).toHaveCount(0);
  await word.focus();
  await expect(note).toContainText('how far the order of one thing follows');
  await expect(word).toHaveAccessibleDescription(/how far the order/);
  await expect(async () => {
    const box = (await note.boundingBox())!;
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(390);
  }).toPass();
  await page.keyboard.press('Escape');
  await expect(note).toHaveCount(0);
  await word.hover();
  await expect(note).toBeVisible();
  await page.getByRole('button', { name: 'Ensemble' }).click();
  await expect(note).toContainText('Many tanks that might be yours');
});
