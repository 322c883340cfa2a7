/** How fast something is used up, in its own measure a day: as set, and at either end of its doubt. */
export interface Pace {
  readonly perDay: number;
  readonly mostPerDay: number;
  readonly leastPerDay: number;
}

/** Whole days from when it was counted: never later than it may be so at the top of the doubt. */
export interface OrderBy {
  /** The last day on which an order still comes before it may run out; below 0: it is late already. */
  readonly orderDays: number;
  readonly soonestDays: number;
  readonly asSetDays: number;
  /** Undefined where it may never run out. */
  readonly latestDays: number | undefined;
}

/** When to order what is used up, so that it is there before it may run out; undefined where nothing is used. */
export function orderBy(
  left: number,
  { perDay, mostPerDay, leastPerDay }: Pace,
  shopDays: number,
): OrderBy | undefined {
  if (!(mostPerDay > 0)) return undefined;
  const soonestDays = Math.floor(left / mostPerDay);
  return {
    soonestDays,
    orderDays: soonestDays - Math.ceil(shopDays),
    asSetDays: perDay > 0 ? Math.floor(left / perDay) : soonestDays,
    latestDays: leastPerDay > 0 ? Math.ceil(left / leastPerDay) : undefined,
  };
}
