/** Ends as the press that is going on is let go; nothing is waited for where there is none. */
let going = Promise.resolve();
let over = (): void => {};

/**
 * Follows the presses of a page. A field gives up its text as a press begins elsewhere: what that
 * text moves on the page would move from under the finger, and a browser drops a press that ends
 * on something else than it began on.
 */
export function followPresses(page: EventTarget): void {
  page.addEventListener(
    'mousedown',
    () => {
      over();
      going = new Promise((resolve) => (over = resolve));
    },
    { capture: true },
  );
  for (const end of ['mouseup', 'dragend', 'pointercancel', 'contextmenu'])
    page.addEventListener(end, () => over(), { capture: true });
}

export const pressOver = (): Promise<void> => going;
