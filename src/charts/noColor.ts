/**
 * Stands in for d3-color, which d3-scale brings along for scales of colours: ours map numbers to
 * numbers, and a first visit need not fetch what no scale asks for (vite.config.ts).
 */
export function color(): null {
  return null;
}

function refuse(): never {
  throw new RangeError('no scale of this page maps to colours');
}

export { refuse as cubehelix, refuse as hcl, refuse as hsl, refuse as lab, refuse as rgb };
