import type { BrowserContext } from '@playwright/test';

const content = `
globalThis.__name = (one) => one;
const toUrl = URL.createObjectURL;
URL.createObjectURL = (blob) => {
  globalThis.lastSaved = blob;
  return toUrl.call(URL, blob);
};
globalThis.openTank = 'tank-1';
const { setItem } = Storage.prototype;
Storage.prototype.setItem = function (key, text) {
  if (key === 'paper-reef current tank') globalThis.hasOpened = globalThis.openTank = text;
  return setItem.call(this, key, text);
};`;

/**
 * What every page of an attack has beside its own. Trap: tsx wraps every function in a helper that a
 * page does not have. And what a page hands to the browser as a file,
 * and which tank it has opened, is kept where it can be read.
 */
export const asWritten = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript({ content });
