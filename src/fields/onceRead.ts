import { tick } from 'svelte';
import { allRead } from './beingRead';

/**
 * Does what a button does once all that was typed is read. While a field in one of these places (CSS
 * selectors) is refused nothing is done, and the field is shown instead.
 */
export async function onceRead(act: () => unknown, ...places: readonly string[]): Promise<void> {
  await allRead();
  await tick();
  const wrong = places.map((place) => `:is(${place}) [aria-invalid="true"]`).join();
  const refused = document.querySelector<HTMLElement>(wrong);
  if (!refused) {
    act();
    return;
  }
  for (let at: Element | null = refused; at; at = at.parentElement)
    if (at instanceof HTMLDetailsElement) at.open = true;
  refused.focus();
}
