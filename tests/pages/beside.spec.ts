import { expect, test, type Page } from '@playwright/test';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview, type PreviewServer } from 'vite';
import { headers } from '../../scripts/headers.mjs';
import { axeFindsNothing } from './axe';

test.use({ serviceWorkers: 'allow' });

/** A server of its own on a copy of the built page, to be stopped and to be given a newer build. */
async function serve(folder: string): Promise<{ server: PreviewServer; address: string }> {
  const server = await preview({
    root: folder,
    configFile: false,
    logLevel: 'silent',
    base: './',
    build: { outDir: '.' },
    preview: { host: '127.0.0.1', port: 4930, headers },
  });
  return { server, address: server.resolvedUrls!.local[0]! };
}

const ready = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (!navigator.serviceWorker.controller) await new Promise((r) => setTimeout(r, 50));
  });

test.describe('beside the tank', () => {
  let folder = '';
  test.beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'paper-reef-page-'));
    cpSync('dist', folder, { recursive: true });
  });
  test.afterEach(() => rmSync(folder, { recursive: true }));

  test('with the server stopped it reloads, runs a trial and opens a page not yet seen', async ({
    page,
  }) => {
    const { server, address } = await serve(folder);
    const errors: string[] = [];
    page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
    await page.goto(address);
    await expect(page.locator('.headline')).toContainText('dKH');
    await ready(page);
    // What the browser has thrown out is kept anew with the next look at it.
    const kept = () =>
      page.evaluate(
        async () => (await (await caches.open((await caches.keys())[0]!)).keys()).length,
      );
    const all = await kept();
    await page.evaluate(async () => {
      const cache = await caches.open((await caches.keys())[0]!);
      for (const [i, one] of (await cache.keys()).entries())
        if (i % 2 === 0) await cache.delete(one);
    });
    await page.reload();
    await expect.poll(kept).toBe(all);
    await server.close();
    await expect(fetch(address)).rejects.toThrow();

    await page.reload();
    await page.getByLabel('Strength of the mix, slider').fill('1.2');
    await expect(page.locator('.headline')).toContainText(/inside 7–11 so far/);
    await page.getByLabel('Net water volume', { exact: true }).fill('80 gal');
    await page.keyboard.press('Enter');
    await expect(page.getByLabel('Net water volume', { exact: true })).toHaveValue('302.833');
    await page.goto(`${address}#lessons/not-ph`);
    await page.getByLabel('pH is lower').check();
    await page.getByRole('button', { name: 'Show what happens' }).click();
    await expect(page.getByRole('heading', { name: 'As you predicted' })).toBeVisible();
    expect(errors).toEqual([]);
  });

  test('a newer build is offered, and taken only when asked for', async ({ page }) => {
    const { server, address } = await serve(folder);
    await page.goto(address);
    await ready(page);
    const worker = join(folder, 'serviceWorker.js');
    const text = readFileSync(worker, 'utf8');
    writeFileSync(worker, text.replace(/'paper-reef \w+'/, "'paper-reef later'"));
    await page.reload();
    const offer = page.getByText('A newer Paper Reef is here');
    await expect(offer).toBeVisible({ timeout: 30_000 });
    // While the page reloads there is nothing to ask yet.
    const caches = () => page.evaluate(() => globalThis.caches.keys()).catch(() => []);
    expect(await caches()).toHaveLength(2);
    await page.reload();
    await expect(offer).toBeVisible();
    await page.getByRole('button', { name: 'Use the newer one' }).click();
    // The build before it stays for windows that still show it: its pieces, not its page.
    const waits = () =>
      page.evaluate(async () => !!(await navigator.serviceWorker.ready).waiting).catch(() => true);
    await expect.poll(waits, { timeout: 30_000 }).toBe(false);
    await expect(page.locator('.headline')).toContainText('dKH');
    await expect(offer).toBeHidden();
    await server.close();
  });
});

test('it can be installed: a manifest with icons that are there', async ({ page, request }) => {
  await page.goto('/');
  const href = await page.locator('link[rel=manifest]').getAttribute('href');
  const manifest = await (await request.get(`/${href}`)).json();
  expect(manifest).toMatchObject({ display: 'standalone', start_url: './' });
  for (const { src, type } of manifest.icons) {
    const icon = await request.get(`/${src}`);
    expect(icon.ok() && icon.headers()['content-type']).toContain(type);
  }
});

test('a theme of one’s own is kept, painted on the charts too, and can follow the system', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('/');
  await expect(page.locator('.headline')).toContainText('dKH');
  const ground = () =>
    page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const chart = () =>
    page
      .locator('canvas')
      .first()
      .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
  const [lightGround, lightChart] = [await ground(), await chart()];
  await page.goto('/#display');
  await page.getByLabel('Paper').selectOption('dark');
  await page.goto('/#bench');
  await expect(page.locator('.headline')).toContainText('dKH');
  const darkGround = await ground();
  expect(darkGround).not.toBe(lightGround);
  await expect.poll(chart).not.toBe(lightChart);
  await page.reload();
  await expect.poll(ground).toBe(darkGround);
  await page.goto('/#display');
  await page.getByLabel('Paper').selectOption('auto');
  expect(await ground()).toBe(lightGround);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await ground()).toBe(darkGround);
});

for (const width of [1280, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`axe finds nothing in the display page at ${width} wide, ${colorScheme}`, async ({
      page,
    }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      await page.goto('/#display');
      await expect(page.getByRole('combobox').first()).toBeVisible();
      await axeFindsNothing(page);
    });
  }
}
