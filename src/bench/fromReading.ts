import type FromReading from './FromReading.svelte';

let fetched: typeof FromReading | undefined;

/** What the newest reading says of the bench: fetched with the store, and at once there with the first picture. */
export const fromReading = (): typeof FromReading | Promise<typeof FromReading> =>
  fetched ?? import('./FromReading.svelte').then((m) => (fetched = m.default));
