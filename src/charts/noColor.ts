/**
 * Stands in for d3-color, which d3-scale brings along for scales of colours: ours map numbers to
 * numbers, and a first visit need not fetch what no scale asks for (vite.config.ts). No text is one.
 */
export function color(): null {
  return null;
}

export { color as cubehelix, color as hcl, color as hsl, color as lab, color as rgb };
