import type { VesselId } from '../../shared/devices/device';
import { alkalinityWeights, BLOCK_SIZE, WATER, type Block } from '../../shared/species/block';
import type { OxygenDemand } from '../../shared/species/oxygenDemand';
import { poolIds, type PoolId } from '../../shared/species/species';
import type { FlatTerms } from './flatTerms';

/** One change of one account for each mole of a reaction. */
export interface Term {
  readonly index: number;
  readonly moles: number;
}

/**
 * Every amount in and around the tank, and the ledger of what moved the tank's alkalinity.
 * `change` is the only line that alters either, so the ledger is the update path itself.
 */
export class Books {
  readonly amounts: Float64Array;
  /** Equivalents of alkalinity that each row has brought to the tank. */
  readonly ledgerEq: Float64Array;
  /** mol of every species and kg of water that each row has brought to the tank: a block a row. */
  readonly broughtIn: Float64Array;
  /** The tank comes first, so its accounts are the block at the front. */
  readonly tank: Block;
  /** What rounding has kept from each amount (Neumaier 1974): only the element closure looks. */
  readonly lost: Float64Array;
  private readonly offsets: ReadonlyMap<VesselId, number>;
  private readonly blocks: ReadonlyMap<VesselId, Block>;
  readonly vesselIds: readonly VesselId[];
  readonly poolOffset: number;

  /** `demand` is what the oxygen closure weighs every account with. */
  constructor(
    vessels: readonly { id: VesselId; contents: Block }[],
    rows: number,
    readonly demand: OxygenDemand,
  ) {
    this.vesselIds = vessels.map(({ id }) => id);
    this.offsets = new Map(vessels.map(({ id }, i) => [id, i * BLOCK_SIZE]));
    this.poolOffset = vessels.length * BLOCK_SIZE;
    this.amounts = new Float64Array(this.poolOffset + poolIds.length);
    this.lost = new Float64Array(this.amounts.length);
    vessels.forEach(({ contents }, i) => this.amounts.set(contents, i * BLOCK_SIZE));
    this.blocks = new Map(
      vessels.map(({ id }, i) => [id, this.amounts.subarray(i * BLOCK_SIZE, (i + 1) * BLOCK_SIZE)]),
    );
    this.tank = this.vessel('tank');
    this.ledgerEq = new Float64Array(rows);
    this.broughtIn = new Float64Array(rows * BLOCK_SIZE);
  }

  offsetOf(vessel: VesselId): number {
    const offset = this.offsets.get(vessel);
    if (offset === undefined) throw new RangeError(`There is no vessel '${vessel}' in this tank.`);
    return offset;
  }

  vessel(id: VesselId): Block {
    const block = this.blocks.get(id);
    if (!block) throw new RangeError(`There is no vessel '${id}' in this tank.`);
    return block;
  }

  poolIndex(id: PoolId): number {
    return this.poolOffset + poolIds.indexOf(id);
  }

  pool(id: PoolId): number {
    return this.amounts[this.poolIndex(id)]!;
  }

  /** Advances a reaction by so many moles. */
  react(row: number, terms: readonly Term[], extentMol: number): void {
    for (let i = 0; i < terms.length; i++) {
      this.change(row, terms[i]!.index, terms[i]!.moles * extentMol);
    }
  }

  /** Advances every reaction of a tank, each on the row of its place and by its own moles. */
  advance({ ends, accounts, moles }: FlatTerms, extentsMol: Float64Array): void {
    let t = 0;
    for (let row = 0; row < ends.length; row++) {
      const extentMol = extentsMol[row]!;
      for (const end = ends[row]!; t < end; t++) {
        this.change(row, accounts[t]!, moles[t]! * extentMol);
      }
    }
  }

  /** Moves water with all it holds (times a factor) from one vessel to another. */
  transfer(row: number, from: number, to: number, block: Block, factor = 1): void {
    for (let i = 0; i < BLOCK_SIZE; i++) {
      const amount = block[i]! * factor;
      if (amount === 0) continue;
      this.change(row, from + i, -amount);
      this.change(row, to + i, amount);
    }
  }

  /** Moves an amount between two accounts. */
  shift(row: number, from: number, to: number, amount: number): void {
    this.change(row, from, -amount);
    this.change(row, to, amount);
  }

  private change(row: number, account: number, amount: number): void {
    const before = this.amounts[account]!;
    const after = before + amount;
    this.amounts[account] = after;
    this.lost[account]! +=
      Math.abs(before) >= Math.abs(amount) ? before - after + amount : amount - after + before;
    if (account < WATER) this.ledgerEq[row]! += alkalinityWeights[account]! * amount;
    if (account < BLOCK_SIZE) this.broughtIn[row * BLOCK_SIZE + account]! += amount;
  }
}
