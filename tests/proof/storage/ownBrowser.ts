import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium, type Browser, type BrowserContext } from '@playwright/test';
import { chromiumPath, launchArgs } from '../../../scripts/chromium.mjs';

/** A browser as a process of our own on a profile of our own, so that it can be killed and begun again. */
export class OwnBrowser {
  private child: ChildProcess | undefined;
  private browser: Browser | undefined;

  constructor(private readonly profile: string) {}

  async start(): Promise<BrowserContext> {
    const portFile = `${this.profile}/DevToolsActivePort`;
    rmSync(portFile, { force: true });
    this.child = spawn(
      chromiumPath()!,
      [
        ...launchArgs,
        '--headless=new',
        '--remote-debugging-port=0',
        '--no-default-browser-check',
        '--password-store=basic',
        `--user-data-dir=${this.profile}`,
        'about:blank',
      ],
      // A group of its own: all its processes end at once.
      { detached: true, stdio: 'ignore' },
    );
    for (let i = 0; i < 600 && !existsSync(portFile); i++) await pause(50);
    await pause(50);
    const [port] = readFileSync(portFile, 'utf8').split('\n');
    this.browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    return this.browser.contexts()[0]!;
  }

  /** As when the power fails: nothing is told, nothing is tidied. */
  async kill(): Promise<void> {
    const { child } = this;
    if (!child?.pid) return;
    const ended = new Promise((done) => child.once('exit', done));
    process.kill(-child.pid, 'SIGKILL');
    await ended;
    await this.browser?.close().catch(() => {});
  }
}
