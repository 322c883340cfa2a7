import { tick } from 'svelte';

/** Another place of a page, as its address has it ("log/away"); there when the promise is kept. */
export async function openPlace(address: string): Promise<void> {
  if (location.hash !== `#${address}`) {
    const changed = new Promise((resolve) => {
      addEventListener('hashchange', resolve, { once: true });
    });
    location.hash = address;
    await changed;
  }
  await tick();
}
