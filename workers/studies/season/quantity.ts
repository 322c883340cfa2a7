import type { Reading } from '../../../shared/log/reading';
import { indexOf, saltKg, type Block } from '../../../shared/species/block';
import { dissolved } from '../../../shared/species/species';
import type { ColumnId } from '../../../shared/trace/columns';

/** What a season moves that no weekly test of alkalinity shows. */
export type SeasonId = 'calcium' | 'magnesium' | 'salinity';

/** How one of them is read, kept and counted. */
export interface SeasonQuantity {
  readonly id: SeasonId;
  readonly reading: 'calciumMgPerL' | 'magnesiumMgPerL' | 'salinityPractical';
  readonly column: ColumnId;
  /** One σ of a reading, in its unit: common practice. */
  readonly kitSigma: number;
  /** What moved it by less is not told apart. */
  readonly told: number;
  /** What a body of water holds of it: mg of the metal, kg of salt. */
  readonly held: (block: Block) => number;
}

const mgOf =
  (id: 'Ca' | 'Mg') =>
  (block: Block): number =>
    block[indexOf[id]]! * dissolved[id].molarMassG * 1000;

export const seasonQuantities: readonly SeasonQuantity[] = [
  {
    ...{ id: 'calcium', reading: 'calciumMgPerL', column: 'calcium_mg_l', kitSigma: 10, told: 0.5 },
    held: mgOf('Ca'),
  },
  {
    ...{
      id: 'magnesium',
      reading: 'magnesiumMgPerL',
      column: 'magnesium_mg_l',
      kitSigma: 30,
      told: 0.5,
    },
    held: mgOf('Mg'),
  },
  {
    ...{
      id: 'salinity',
      reading: 'salinityPractical',
      column: 'salinity_ppt',
      kitSigma: 0.3,
      told: 0.05,
    },
    held: (block) => saltKg(block),
  },
];

/** The readings of one quantity, in order of time. */
export const readingsOf = (
  { reading }: SeasonQuantity,
  readings: readonly Reading[],
): { readonly at: string; readonly value: number }[] =>
  readings.flatMap(({ at, [reading]: value }) => (value === undefined ? [] : [{ at, value }]));
