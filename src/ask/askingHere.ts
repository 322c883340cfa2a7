import { onDestroy } from 'svelte';
import { Asking } from './asking';

/** The questions of a component; what is still asked when it goes is ended. */
export function askingHere(tooLong?: string): Asking {
  const asking = new Asking(tooLong === undefined ? {} : { tooLong });
  onDestroy(() => asking.leave());
  return asking;
}
