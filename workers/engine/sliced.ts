/** A long calculation that pauses between its parts, so that whoever runs it may let others in, or end it. */
export type Sliced<T> = Generator<void, T>;

/** Runs it to its end. */
export function inOneGo<T>(work: Sliced<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
