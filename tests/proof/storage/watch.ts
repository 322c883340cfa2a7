import type { Page } from '@playwright/test';

/** Errors of a page, and what it must never show; each is told once. */
export class Watch {
  private readonly found = new Set<string>();
  /** What may fail to be fetched: the network was taken away on purpose. */
  isOffline = false;
  readonly notices = new Set<string>();

  constructor(private readonly page: Page) {
    page.on('pageerror', (error) => this.found.add(`uncaught ${error.message}`));
    page.on('console', (message) => {
      const text = message.text();
      if (message.type() !== 'error' || (this.isOffline && /Failed to (load|fetch)/.test(text)))
        return;
      this.found.add(`console: ${text}`);
    });
  }

  /** Looks at what is shown now. */
  async look(): Promise<void> {
    const shown = await this.page
      .evaluate(() => ({
        text: document.body.innerText,
        isBlank:
          !document.querySelector('header h1') || !document.querySelector('main')?.innerText.trim(),
        notices: [...document.querySelectorAll('p.notice')].map(
          (one) => (one as HTMLElement).innerText,
        ),
      }))
      // It was just going to another page.
      .catch(() => undefined);
    if (!shown) return;
    if (shown.isBlank) this.found.add('the page is blank');
    // What was put aside quotes what stood there.
    const nonsense = /.{0,20}\b(NaN|undefined|\[object)\b.{0,20}/.exec(
      shown.text.replaceAll('got NaN;', ''),
    );
    if (nonsense) this.found.add(`shows “${nonsense[0]}”`);
    for (const notice of shown.notices) this.notices.add(notice);
  }

  /** What was found since it was last asked. */
  faults(): string[] {
    const faults = [...this.found];
    this.found.clear();
    return faults;
  }
}
