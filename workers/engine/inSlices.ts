import type { Sliced } from './sliced';

/** Between slices of this length a cancel or a newer job may come in. */
export const SLICE_MS = 12;

/** Runs a calculation in slices; undefined when it is no longer wanted. */
export async function inSlices<T>(
  work: Sliced<T>,
  goesOn: () => Promise<boolean>,
): Promise<T | undefined> {
  let begun = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (performance.now() - begun < SLICE_MS) continue;
    if (!(await goesOn())) return undefined;
    begun = performance.now();
  }
}
