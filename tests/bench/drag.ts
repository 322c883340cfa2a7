import { chromium, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { build, preview } from 'vite';
import { chromiumPath, launchArgs } from '../../scripts/chromium.mjs';
import { quantile } from './quantile';

/** What one drag step took, ms: from the input event to the frame that shows it. */
interface DragStep {
  readonly frame: number;
  readonly engine: number;
  readonly roundTrip: number;
}

const STEPS = 60;
const WARM_UP = 10;

/** Three trials of 90 days on the bench, the last one selected. */
async function threeTrials(page: Page): Promise<void> {
  const text = readFileSync(
    new URL('../../scenarios/limewater-holds.json', import.meta.url),
    'utf8',
  );
  await page.locator('input[type=file]').setInputFiles({
    name: 'ninety.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...JSON.parse(text), days: 90 })),
  });
  await page.getByRole('button', { name: 'Keep, and try another' }).click();
  await page.getByText('Trial B', { exact: true }).first().waitFor();
  await page.waitForTimeout(1500);
}

/** Moves the strength slider step by step and waits each time for the frame after the redraw. */
const drag = (page: Page): Promise<DragStep[]> =>
  page.evaluate(async (steps) => {
    let drawn: (() => void) | undefined;
    const beginPath = CanvasRenderingContext2D.prototype.beginPath;
    CanvasRenderingContext2D.prototype.beginPath = function () {
      drawn?.();
      beginPath.call(this);
    };
    const slider = document.querySelector<HTMLInputElement>(
      'input[type=range][aria-label="Strength of the mix, slider"]',
    )!;
    const taken = [];
    for (let i = 0; i < steps; i++) {
      const trialsBefore = performance.getEntriesByName('trial').length;
      const begun = performance.now();
      const rerun = () => performance.getEntriesByName('trial').length > trialsBefore;
      // Other trials may be drawn again before the answer is there.
      const redrawn = new Promise<void>((resolve) => (drawn = () => rerun() && resolve()));
      slider.value = String(0.5 + 0.01 * (i % 40));
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await redrawn;
      await new Promise((resolve) => requestAnimationFrame(resolve));
      await new Promise<void>((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve();
        port2.postMessage(0);
      });
      const frame = performance.now() - begun;
      const trials = performance.getEntriesByName('trial').slice(trialsBefore);
      const [trial] = trials as PerformanceMeasure[];
      if (trials.length !== 1 || !trial) throw new Error(`${trials.length} trials were rerun`);
      taken.push({ frame, engine: trial.detail.engineMs, roundTrip: trial.duration });
    }
    return taken;
  }, STEPS + WARM_UP);

/** Times a drag in Chromium; prints one figure a line. */
export async function benchDrag(print: (name: string, value: number, unit: string) => void) {
  await build({ logLevel: 'error' });
  const server = await preview({ preview: { host: '127.0.0.1', port: 4874 } });
  const executablePath = chromiumPath();
  const browser = await chromium.launch({
    args: launchArgs,
    ...(executablePath && { executablePath }),
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto('http://127.0.0.1:4874/');
    await threeTrials(page);
    const steps = (await drag(page)).slice(WARM_UP);
    const of = (value: (step: DragStep) => number, part: number) =>
      quantile(steps.map(value), part);
    print(
      'drag_to_painted_frame_p50',
      of(({ frame }) => frame, 0.5),
      'ms',
    );
    print(
      'drag_to_painted_frame_p95',
      of(({ frame }) => frame, 0.95),
      'ms',
    );
    print(
      'drag_engine_p50',
      of(({ engine }) => engine, 0.5),
      'ms',
    );
    print(
      'drag_transfer_p50',
      of((s) => s.roundTrip - s.engine, 0.5),
      'ms',
    );
    print(
      'drag_verdict_and_paint_p50',
      of((s) => s.frame - s.roundTrip, 0.5),
      'ms',
    );
  } finally {
    await browser.close();
    await server.close();
  }
}
