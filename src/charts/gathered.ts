/** Things that stand together in one place of an axis. */
interface Gathered<T> {
  /** The middle of the first and the last, px. */
  readonly at: number;
  readonly together: readonly T[];
}

/** Things in order along an axis, with those nearer to one another than so many px in one place. */
export function gathered<T>(
  things: readonly T[],
  placeOf: (thing: T) => number,
  apart: number,
): Gathered<T>[] {
  const groups: { from: number; to: number; together: T[] }[] = [];
  for (const thing of things) {
    const at = placeOf(thing);
    const last = groups.at(-1);
    // A place is where its middle is: two middles are never nearer than that.
    if (last && at - (last.from + last.to) / 2 < apart) {
      last.together.push(thing);
      last.to = at;
    } else groups.push({ from: at, to: at, together: [thing] });
  }
  return groups.map(({ from, to, together }) => ({ at: (from + to) / 2, together }));
}
