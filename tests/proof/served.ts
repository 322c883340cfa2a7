import { spawn } from 'node:child_process';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { chromium, type Page } from '@playwright/test';
import { chromiumPath, launchArgs } from '../../scripts/chromium.mjs';
import type { Attacked } from './storage/attacked';

const PATIENCE_MS = 120_000;

/** The server of `npm start`, once it says where it listens; and how it is ended. */
function started(): Promise<{ address: string; stop: () => void }> {
  const child = spawn(process.execPath, ['scripts/start.mjs'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((done, failed) => {
    setTimeout(
      () => failed(new Error('npm start did not say where it listens')),
      PATIENCE_MS,
    ).unref();
    let said = '';
    child.stdout.on('data', (text: Buffer) => {
      said += text.toString();
      const address = /http:\/\/[\w.]+:\d+/.exec(said.replaceAll(/\u001b\[\d+m/g, ''))?.[0];
      if (address) done({ address, stop: () => child.kill() });
    });
  });
}

const answers = (host: string, port: number): Promise<boolean> =>
  new Promise((done) => {
    const socket = connect({ host, port, timeout: 2000 });
    const told = (is: boolean) => () => {
      socket.destroy();
      done(is);
    };
    socket.once('connect', told(true)).once('error', told(false)).once('timeout', told(false));
  });

/** What the page's policy must refuse, tried from inside it; whatever was let through is told. */
const letThrough = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const through: string[] = [];
    const here = globalThis as { ran?: string };
    const inline = document.createElement('script');
    inline.textContent = 'globalThis.ran = "an inline script"';
    document.head.append(inline);
    const evaluating = document.createElement('button');
    evaluating.setAttribute('onclick', 'globalThis.ran = "an inline handler"');
    document.body.append(evaluating);
    evaluating.click();
    evaluating.remove();
    if (here.ran) through.push(here.ran);
    await fetch('http://127.0.0.1:9/').then(
      () => through.push('a connection'),
      () => undefined,
    );
    for (const source of ['data:text/javascript,globalThis.ran="data"', 'blob:null/1']) {
      delete here.ran;
      const script = document.createElement('script');
      script.src = source;
      document.head.append(script);
      await new Promise((then) => (script.onerror = script.onload = then));
      if (here.ran) through.push(`a script of ${source}`);
    }
    const frame = document.createElement('iframe');
    frame.src = './';
    document.body.append(frame);
    await new Promise((then) => (frame.onload = then));
    try {
      if (frame.contentDocument?.querySelector('#app'))
        through.push('a frame of the page in itself');
    } catch {
      // Refused: another origin stands there.
    }
    frame.remove();
    return through;
  });

/** Whether code made of text runs: a script of the page itself tries it, since a debugger may. */
async function evaluates(page: Page): Promise<boolean> {
  await page.evaluate(`setTimeout('globalThis.ranText = true', 0)`);
  await page.waitForTimeout(300);
  return page.evaluate(() => 'ranText' in globalThis);
}

/** The headers and the policy as `npm start` serves them. */
export async function servedAttack(): Promise<Attacked> {
  const broken: string[] = [];
  const { address, stop } = await started();
  const executablePath = chromiumPath();
  const browser = await chromium.launch({
    args: launchArgs,
    ...(executablePath && { executablePath }),
  });
  let tried = 0;
  const isSo = (fact: boolean, otherwise: string) => {
    tried++;
    if (!fact) broken.push(otherwise);
  };
  try {
    const html = await fetch(address);
    const policy = html.headers.get('content-security-policy') ?? '';
    for (const part of [
      "default-src 'none'",
      "frame-ancestors 'none'",
      "connect-src 'self'",
      "script-src 'self'",
    ]) {
      isSo(policy.split('; ').includes(part), `the policy lacks ${part}`);
    }
    isSo(!/unsafe|\*|https?:/.test(policy), `the policy allows more: ${policy}`);
    isSo(html.headers.get('x-content-type-options') === 'nosniff', 'types may be guessed');
    isSo(html.headers.get('referrer-policy') === 'no-referrer', 'a referrer is told');
    const worker = await fetch(`${address}/serviceWorker.js`);
    isSo(worker.headers.get('content-security-policy') === policy, 'workers have another policy');
    const port = Number(new URL(address).port);
    const outside = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ internal }) => !internal);
    for (const { address: host } of outside)
      isSo(!(await answers(host, port)), `it answers at ${host}, too`);
    const page = await (await browser.newContext()).newPage();
    await page.addInitScript({ content: 'globalThis.__name = (one) => one;' });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(address);
    await page.locator('.headline').filter({ hasText: 'dKH' }).waitFor();
    for (const hash of ['log', 'drills', 'lessons', 'words', 'display', 'tanks']) {
      await page.evaluate((to) => (location.hash = to), hash);
      await page.waitForTimeout(400);
    }
    const abroad = asked.filter((url) => !url.startsWith(address) && !/^(data|blob):/.test(url));
    isSo(abroad.length === 0, `it asks others: ${abroad.join()}`);
    isSo(!(await evaluates(page)), 'text is run as code');
    const through = await letThrough(page);
    isSo(through.length === 0, `let through: ${through.join()}`);
    return {
      attack: 'the policy and headers of npm start, tried from inside and from the network',
      tried,
      broken,
      figures: `${asked.length} requests, all to itself; ${outside.length} addresses of the machine at which it does not answer`,
    };
  } finally {
    await browser.close();
    stop();
  }
}
