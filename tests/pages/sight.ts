import { expect, test, type Locator, type Page } from '@playwright/test';

export const sizes = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
];

/**
 * Goes to each lever, moves it by one step, as a drag begins, and looks whether lever and picture are whole
 * in sight then: on a phone over the page's own bar, and the picture over the lever. Names those that are not.
 */
export async function outOfSight(page: Page, levers: Locator, picture: Locator): Promise<string[]> {
  const shown = (await picture.elementHandle())!;
  const { tried, hidden } = await levers.evaluateAll(async (all, shown) => {
    /** Below this a page has its bar at the bottom, and its picture over the levers. */
    const isPhone = innerWidth < 860;
    const bar =
      isPhone && [...document.querySelectorAll('nav')].find((nav) => nav.offsetHeight > 0);
    const floor = bar ? bar.getBoundingClientRect().top : innerHeight;
    /** A browser scrolls by whole pixels. */
    const ROUNDED = 0.5;
    /** A move of the bench asks for a whole trial: among many levers, each eighth. */
    const each = all.length > 20 ? 8 : 1;
    const hidden: string[] = [];
    for (const [i, lever] of (all as HTMLInputElement[]).entries()) {
      lever.scrollIntoView({ block: 'nearest' });
      lever.focus();
      if (i % each === 0) {
        if (Number(lever.value) < Number(lever.max)) lever.stepUp();
        else lever.stepDown();
        lever.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((settled) => setTimeout(settled));
      }
      const [at, picture] = [lever.getBoundingClientRect(), shown.getBoundingClientRect()];
      const isSeen = ({ top, bottom }: DOMRect) => top >= -ROUNDED && bottom <= floor + ROUNDED;
      const covered = isPhone && at.top < picture.bottom;
      if (!isSeen(at) || !isSeen(picture) || covered)
        hidden.push(`${lever.getAttribute('aria-label') ?? lever.closest('label')?.textContent}`);
    }
    return { tried: all.length, hidden };
  }, shown);
  const description = `${tried} levers tried at ${page.viewportSize()!.width}, ${hidden.length} without their picture`;
  test.info().annotations.push({ type: 'in sight', description });
  return hidden;
}

/** Every lever of a page that is shown. */
export async function leversOf(page: Page, least: number): Promise<Locator> {
  const levers = page.locator('main input[type=range]:visible');
  await expect.poll(() => levers.count()).toBeGreaterThan(least);
  return levers;
}
