import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

type Listener = () => void;

/** A service worker's container as two windows see it: one worker is active, a newer one waits. */
function browser(controlled: boolean) {
  const listeners = new Map<string, Listener[]>();
  const waiting = { state: 'installed', postMessage: vi.fn() };
  const reload = vi.fn();
  const registration = { waiting, installing: null, addEventListener: () => {} };
  const serviceWorker = {
    controller: controlled ? {} : null,
    addEventListener: (name: string, listener: Listener) =>
      listeners.set(name, [...(listeners.get(name) ?? []), listener]),
    register: () => Promise.resolve(registration),
  };
  vi.stubGlobal('navigator', { serviceWorker });
  vi.stubGlobal('location', { reload });
  const takesOver = () => {
    serviceWorker.controller = {};
    for (const listener of listeners.get('controllerchange') ?? []) listener();
  };
  return { serviceWorker, waiting, reload, takesOver };
}

const page = async () => (await import('../../src/app/offline.svelte')).offline;

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

describe('a newer page that waits', () => {
  it('is called in, and the page reloads once it has taken over', async () => {
    const { waiting, reload, takesOver } = browser(true);
    const offline = await page();
    await offline.keep();
    expect(offline.newer).toBe(true);
    offline.takeNewer();
    expect(waiting.postMessage).toHaveBeenCalledWith('take over');
    expect(reload).not.toHaveBeenCalled();
    takesOver();
    expect(reload).toHaveBeenCalledOnce();
  });

  it('that another window has called in is told of, and a press reloads', async () => {
    const { reload, takesOver } = browser(true);
    const offline = await page();
    await offline.keep();
    takesOver();
    expect(offline.takenOver).toBe(true);
    offline.takeNewer();
    expect(reload).toHaveBeenCalledOnce();
  });

  it('is told of in a window that is open since the very first visit, too', async () => {
    const { takesOver } = browser(false);
    const offline = await page();
    await offline.keep();
    takesOver();
    expect(offline.takenOver).toBe(false);
    takesOver();
    expect(offline.takenOver).toBe(true);
  });

  it('answers a press even when it waits no longer', async () => {
    const { waiting, reload } = browser(true);
    const offline = await page();
    await offline.keep();
    waiting.state = 'activated';
    offline.takeNewer();
    expect(reload).toHaveBeenCalledOnce();
  });
});
