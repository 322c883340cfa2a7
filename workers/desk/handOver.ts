const handedOver = new WeakMap<object, readonly ArrayBuffer[]>();

/** Marks what a value hands over when it crosses the border: it is moved, and left empty here. */
export function handOver<T extends object>(value: T, buffers: readonly ArrayBuffer[]): T {
  handedOver.set(value, buffers);
  return value;
}

export const buffersOf = (value: unknown): ArrayBuffer[] => [
  ...((value instanceof Object && handedOver.get(value)) || []),
];
