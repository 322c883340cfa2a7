import { expect, test, type Page } from '@playwright/test';
import { axeFindsNothing } from './axe';
import { openPlace } from './logged';

test.use({ locale: 'de-DE' });
test.setTimeout(240_000);

/** Words that no German sentence has between two spaces. */
const ENGLISH = /[^\n]* (the|and|your|of|with|is|to|a|from|for|its|are|it) [^\n]*/g;

/** The choice of language speaks both. */
const BOTH = /Language/;

/** Everything on the page that a reader meets, by eye or by ear. */
async function words(page: Page): Promise<string> {
  return page.evaluate(() => {
    // Titles of papers stand in the language they were written in.
    for (const source of document.querySelectorAll<HTMLElement>('main [lang="en"]'))
      source.hidden = true;
    const named = [...document.querySelectorAll('[aria-label], [placeholder], [title]')].flatMap(
      (one) =>
        ['aria-label', 'placeholder', 'title'].map((name) => ` ${one.getAttribute(name) ?? ''} `),
    );
    return [document.body.innerText, ...named].join('\n');
  });
}

async function isGerman(page: Page) {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  const found = (await words(page)).match(ENGLISH) ?? [];
  expect(found.filter((line) => !BOTH.test(line))).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(page.viewportSize()!.width);
}

// The narrow screen is the one where longer words would not fit.
test.describe('at 390 wide', () => {
  test.use({ viewport: { width: 390, height: 900 } });

  test('no range breaks after its dash, and no line of the log has to be moved sideways', async ({
    page,
  }) => {
    await page.goto('/');
    await page.locator('.first-minute select').nth(1).selectOption({ index: 2 });
    await page.locator('.first-minute button').first().click();
    const range = page.locator('.headline').getByText(/^\d,\d–\d,\d$/);
    for (let width = 320; width < 480; width += 10) {
      await page.setViewportSize({ width, height: 900 });
      expect(await range.evaluate((one) => one.getClientRects().length), `${width} wide`).toBe(1);
    }
    await page.setViewportSize({ width: 390, height: 900 });
    await page.goto('/#log');
    const dkh = page.getByLabel('Alkalinität', { exact: true }).first();
    await dkh.fill('8,4');
    await dkh.press('Enter');
    const lines = page.locator('[aria-labelledby=readings-title] .scroll');
    await expect(lines).toBeVisible();
    expect(await lines.evaluate((one) => one.scrollWidth - one.clientWidth)).toBe(0);
  });

  test('the bench speaks German: a second trial, a refused number, each fold, a link', async ({
    page,
  }) => {
    await page.addInitScript(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: (text: string) => (document.body.dataset.copied = text) },
      });
    });
    await page.goto('/');
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await expect(page.locator('.headline')).toContainText('Versuch A fällt an Tag');
    await isGerman(page);
    await page.getByRole('button', { name: 'Behalten und einen weiteren probieren' }).click();
    await page.getByLabel('Stärke der Mischung, Regler').fill('1.4');
    const typed = page.getByLabel('Nachfüllbehälter', { exact: true });
    await typed.fill('viel');
    await typed.press('Enter');
    await expect(page.getByRole('alert').first()).toContainText('Es bleibt bei 20 L.');
    await isGerman(page);
    // Nothing acts on a plan while a field of it is refused.
    await page.getByRole('button', { name: 'Link kopieren' }).click();
    await expect(typed).toBeFocused();
    await typed.press('Escape');
    await page.getByRole('button', { name: 'Eine einmalige Zugabe hinzufügen' }).click();
    await page.getByRole('button', { name: 'Hydrogencarbonat hinzufügen' }).click();
    await page.getByRole('button', { name: /^Woran lag es/ }).click();
    await expect(page.getByText('Nur dies geändert in')).toBeVisible();
    await page.getByRole('button', { name: /^kLa und Photosynthese/ }).click();
    await expect(page.getByText(/pH .* bei Licht an und/)).toBeVisible({ timeout: 30_000 });
    await isGerman(page);
    await axeFindsNothing(page);
    await page.getByRole('button', { name: 'Link kopieren' }).click();
    await expect(page.getByText('Ein Link mit allen 3 Plänen ist kopiert.')).toBeVisible();
    await page.goto(await page.evaluate(() => document.body.dataset.copied!));
    await expect(page.getByText('Er enthält 3 Pläne.')).toBeVisible();
    await isGerman(page);
    await page.goto('/#plan/1.kaputt');
    await expect(page.getByRole('alert')).toContainText('Der Link wurde nicht geöffnet');
    await isGerman(page);
  });

  test('a bad file, every example and the first minute are answered in German', async ({
    page,
  }) => {
    await page.goto('/');
    await expect(page.locator('.headline')).toContainText('Versuch A fällt an Tag');
    await page.getByLabel('Eine Plandatei öffnen').setInputFiles({
      name: 'kaputt.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"type": "paper-reef/scenario", "version": 2, "days": -1}'),
    });
    await expect(page.getByText('kaputt.json wurde nicht geöffnet')).toBeVisible();
    await isGerman(page);
    await page.getByRole('button', { name: 'Auf die Werkbank damit' }).click();
    await expect(page.locator('.question')).toContainText('werden verbraucht');
    for (const example of await page.locator('.shelf button').all()) {
      await example.click();
      await expect(page.locator('.headline')).not.toContainText('gerechnet');
      await isGerman(page);
    }
  });

  test('the display page speaks German, and English by choice', async ({ page }) => {
    await page.goto('/#display');
    await expect(page.getByRole('heading', { name: 'Wie alles angezeigt wird' })).toBeVisible();
    await isGerman(page);
    await axeFindsNothing(page);
    await page.getByLabel('Sprache · Language').selectOption('English');
    await expect(page.getByRole('heading', { name: 'How things are shown' })).toBeVisible();
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('lang', 'en');
    await page.getByLabel('Language · Sprache').selectOption('as the browser');
    await expect(page.getByRole('heading', { name: 'Wie alles angezeigt wird' })).toBeVisible();
  });

  test('the log speaks German: empty, with readings, a plan, its card, lines pasted', async ({
    page,
  }) => {
    await page.goto('/#log');
    await expect(page.getByRole('heading', { name: 'Das Messbuch', exact: true })).toBeVisible();
    await isGerman(page);
    await page
      .getByLabel('Zu lesende Zeilen')
      .fill('01.03.2026 8,4\n02.03.2026 8,1\n03.03.2026 8,2\n14.03.2026 7,5\n15.03.2026 99');
    await page.getByRole('button', { name: 'Diese Zeilen lesen' }).click();
    await expect(page.getByText('4 Zeilen würden übernommen')).toBeVisible();
    await expect(page.getByText(/^Zeile 5: Alkalinität/)).toBeVisible();
    await isGerman(page);
    await page.getByRole('button', { name: 'Diese 4 Zeilen übernehmen' }).click();
    await expect(page.getByText('eingefügte Zeilen: 4 Zeilen übernommen.')).toBeVisible();
    await expect(page.locator('main .headline').first()).toContainText(
      /Das Becken verbraucht \d,\d\d ± \d,\d\d dKH am Tag, Stand 14\. März/,
    );
    await openPlace(page, 'Pläne', 'Teile des Messbuchs');
    await page.getByRole('button', { name: 'Drei Pläne ausarbeiten' }).click();
    await page
      .locator('article.chosen')
      .getByRole('button', { name: 'Karte machen' })
      .click({ timeout: 60_000 });
    await expect(page.getByRole('article', { name: 'Dosierkarte' })).toContainText(
      'Nächster Test:',
    );
    await isGerman(page);
    await openPlace(page, 'Vorrat', 'Teile des Messbuchs');
    await page.getByLabel('in, Tage').fill('5');
    await page.getByLabel('in, Tage').press('Enter');
    await page.getByRole('button', { name: 'Gegen den Plan halten' }).click();
    await expect(page.getByText(/Nach dem Plan sollten/)).toBeVisible({ timeout: 30_000 });
    await openPlace(page, 'Verreist', 'Teile des Messbuchs');
    await page.getByRole('button', { name: 'Auf dem simulierten Becken allein lassen' }).click();
    await expect(page.getByText(/^Am schlimmsten, während niemand/)).toBeVisible({
      timeout: 60_000,
    });
    await openPlace(page, 'Saison', 'Teile des Messbuchs');
    await page.getByRole('button', { name: 'Über die Saison blicken' }).click();
    await expect(page.getByText(/^Nichts von Calcium, Magnesium und Salzgehalt/)).toBeVisible({
      timeout: 60_000,
    });
    await isGerman(page);
    await openPlace(page, 'Verreist', 'Teile des Messbuchs');
    await page.getByRole('link', { name: 'Der Zettel für die Vertretung' }).click();
    await expect(page.getByText('Menschen zuerst.')).toBeVisible({ timeout: 60_000 });
    await isGerman(page);
    await page.goto('/#log');
    await page.getByRole('button', { name: 'Weiteres Becken' }).click();
    await isGerman(page);
    await axeFindsNothing(page);
  });

  test('the drills speak German, each study asked', async ({ page }) => {
    await page.goto('/#drills');
    await expect(page.locator('.headline')).toContainText(/erreichte? (der pH )?höchstens/);
    await isGerman(page);
    await page.getByLabel('Probierte Becken').fill('20');
    await page.getByLabel('Probierte Becken').press('Enter');
    await page.getByRole('button', { name: '20 Becken probieren' }).click();
    await expect(page.getByText(/von 20 Becken überschreitet/)).toBeVisible({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Maßnahmen probieren' }).click();
    await expect(page.getByRole('row', { name: /^belüften/ })).toBeVisible({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Ausrechnen' }).click();
    await expect(page.getByText(/Höchstens|Wie klein auch/).first()).toBeVisible({
      timeout: 90_000,
    });
    await expect(page.getByRole('img', { name: /^Höchster pH/ })).toBeVisible({
      timeout: 90_000,
    });
    await page.getByRole('button', { name: 'Ausprobieren, was es verhindert' }).click();
    await expect(page.getByText('Überschrittene Grenzen')).toBeVisible({ timeout: 60_000 });
    await page.getByRole('button', { name: '+ Batterie-Luftpumpe' }).click();
    await isGerman(page);
    await axeFindsNothing(page);
    await page.goto('/#wall');
    await expect(page.getByText(/Sich selbst überlassen/).first()).toBeVisible({ timeout: 60_000 });
    await isGerman(page);
  });

  test('every lesson speaks German, to its end and on its sheet', async ({ page }) => {
    await page.goto('/#lessons');
    await expect(page.getByRole('heading', { name: 'Lektionen' })).toBeVisible();
    await isGerman(page);
    const lessons = await page
      .locator('main ol a')
      .evaluateAll((all) => all.map((one) => one.getAttribute('href')!));
    expect(lessons.length).toBeGreaterThan(5);
    for (const address of lessons) {
      await page.goto(`/${address}`);
      await page.getByRole('radio').first().check();
      await page.getByRole('button', { name: 'Zeigen, was geschieht' }).click();
      await page.getByRole('button', { name: 'Antwort zeigen' }).click();
      await expect(page.getByRole('heading', { name: 'Warum', exact: true })).toBeVisible();
      await isGerman(page);
      await page.emulateMedia({ media: 'print' });
      await expect(page.getByText('Für die Lehrkraft')).toBeVisible();
      expect(((await words(page)).match(ENGLISH) ?? []).filter((line) => !BOTH.test(line))).toEqual(
        [],
      );
      await page.emulateMedia({ media: 'screen' });
    }
    await axeFindsNothing(page);
  });

  test('the words speak German', async ({ page }) => {
    await page.goto('/#words');
    await expect(page.getByRole('heading', { name: 'Begriffe' })).toBeVisible();
    await isGerman(page);
    await axeFindsNothing(page);
  });
});
