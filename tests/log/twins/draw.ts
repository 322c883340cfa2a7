import { randomNormal } from 'd3-random';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Where one twin's chance comes from; the same number gives the same twin on every machine. */
export interface Draw {
  readonly between: (low: number, high: number) => number;
  /** Evenly on a logarithmic scale. */
  readonly evenly: (low: number, high: number) => number;
  readonly normal: () => number;
}

const SEED = 20261125;

export function drawOf(number: number): Draw {
  const generator = xoroshiro128plus(Math.imul(number + 1, 0x9e3779b1) ^ SEED);
  for (let i = 0; i < 8; i++) generator.next();
  const source = () => uniformFloat64(generator);
  const between = (low: number, high: number) => low + (high - low) * source();
  return {
    between,
    evenly: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    normal: randomNormal.source(source)(0, 1),
  };
}
