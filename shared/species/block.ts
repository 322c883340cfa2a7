import { dissolved, dissolvedIds, saltKgPerMol, type DissolvedId } from './species';

/** One body of water is a block of numbers: mol of each dissolved species, then kg of water. */
export const WATER = dissolvedIds.length;
export const BLOCK_SIZE = WATER + 1;
export type Block = Float64Array;

export const indexOf = Object.fromEntries(dissolvedIds.map((id, i) => [id, i])) as Record<
  DissolvedId,
  number
>;
export const alkalinityWeights = Float64Array.from(
  dissolvedIds,
  (id) => dissolved[id].alkalinityWeight,
);
export const saltKgWeights = Float64Array.from(dissolvedIds, saltKgPerMol);

export const emptyBlock = (): Block => new Float64Array(BLOCK_SIZE);

/** Total alkalinity of a body of water, equivalents: derived from its ions, never stored. */
export function alkalinityEq(block: Block, offset = 0): number {
  let sum = 0;
  for (let i = 0; i < WATER; i++) sum += alkalinityWeights[i]! * block[offset + i]!;
  return sum;
}

/** Dissolved salt of a body of water, kg. */
export function saltKg(block: Block, offset = 0): number {
  let sum = 0;
  for (let i = 0; i < WATER; i++) sum += saltKgWeights[i]! * block[offset + i]!;
  return sum;
}

/** Water and salt together, kg. */
export const solutionKg = (block: Block, offset = 0): number =>
  block[offset + WATER]! + saltKg(block, offset);

export function addScaled(target: Block, source: Block, factor: number, offset = 0): void {
  for (let i = 0; i < BLOCK_SIZE; i++) target[offset + i]! += factor * source[i]!;
}

/** Faster than the typed array's own `set` for so few numbers. */
export function copyBlock(target: Block, source: Block): void {
  for (let i = 0; i < BLOCK_SIZE; i++) target[i] = source[i]!;
}
