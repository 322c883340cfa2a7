import { defineConfig, type ReporterDescription } from '@playwright/test';
import { chromiumPath, launchArgs } from './scripts/chromium.mjs';

const address = 'http://127.0.0.1:4873';
/** Where developers and tests see every part. */
export const galleryAddress = 'http://127.0.0.1:4874/tests/gallery/';
const executablePath = chromiumPath();
const json: ReporterDescription[] = process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['json']] : [];

export default defineConfig({
  testDir: 'tests/pages',
  testMatch: '**/*.spec.ts',
  // What it waits for is worked out on all cores: two at once take as long.
  workers: 1,
  // A slow machine is no failure.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  retries: 0,
  forbidOnly: !!process.env.CI,
  globalTimeout: 18 * 60_000,
  reporter: [['list'], ...json],
  use: {
    baseURL: address,
    // What is kept for offline would be fetched whole beside every test: those of it allow it.
    serviceWorkers: 'block',
    launchOptions: { args: launchArgs, ...(executablePath && { executablePath }) },
  },
  webServer: [
    {
      command:
        'vite build --logLevel warn && vite preview --host 127.0.0.1 --port 4873 --strictPort',
      url: address,
      reuseExistingServer: false,
      timeout: 120_000,
    },
    // The gallery of parts is in no build.
    {
      command: 'vite --logLevel warn --host 127.0.0.1 --port 4874 --strictPort',
      url: `${galleryAddress}index.html`,
      reuseExistingServer: false,
    },
  ],
});
