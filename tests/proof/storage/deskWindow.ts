import type { Page } from '@playwright/test';
import type { Chance } from './chance';
import { LEVERS, type Lever } from './onPage';
import type { Oracle } from './oracle';
import { Watch } from './watch';

/** One window at a desk: what was done in it since it opened its tank, each told to the oracle. */
export class DeskWindow {
  readonly watch: Watch;
  /** The readings, and the levers, that this window touched in the open tank since it opened it. */
  touched = new Set<string>();
  turned = new Set<Lever>();
  private count = 0;

  constructor(
    readonly page: Page,
    readonly chance: Chance,
    readonly oracle: Oracle,
    readonly who: number,
    private readonly seed: number,
  ) {
    this.watch = new Watch(page);
  }

  async goTo(page: 'log' | 'bench' | 'display'): Promise<void> {
    if (new URL(this.page.url()).hash.slice(1) === page) return;
    await this.page.evaluate((hash) => (location.hash = hash), page);
    const there = {
      log: '#new-alkalinityDkh',
      bench: `#field-${LEVERS[0]}`,
      display: '#show-alkalinity',
    };
    await this.page.locator(there[page]).waitFor({ timeout: 30_000 });
  }
  note(act: string): void {
    this.oracle.note(this.who, act);
  }
  /** A name for a reading or a tank that nothing else has. */
  named(): string {
    return `n${this.seed}_${this.who}_${++this.count}`;
  }
  async opened(): Promise<void> {
    this.touched = new Set();
    this.turned = new Set();
    await this.page.waitForTimeout(50);
  }
  /** The page has been loaded anew; levers wait until it has read what was saved. */
  async reopened(): Promise<void> {
    await this.page.locator('main').first().waitFor();
    this.touched = new Set();
    this.turned = new Set();
  }
  async hasRead(): Promise<void> {
    const read = () => (globalThis as { hasOpened?: string }).hasOpened !== undefined;
    await this.page.waitForFunction(read, null, { timeout: 60_000 });
  }
}
