const Z = 1.959964;

/** The 95 % interval of a share by so many tries (Wilson 1927). */
export function wilson(of: number, tried: number): readonly [low: number, high: number] {
  const share = of / tried;
  const spread = (Z * Z) / tried;
  const middle = (share + spread / 2) / (1 + spread);
  const half = (Z * Math.sqrt((share * (1 - share)) / tried + spread / tried / 4)) / (1 + spread);
  return [middle - half, middle + half];
}
