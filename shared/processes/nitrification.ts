import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** Share of the ammonia that a run-in filter oxidises in an hour (common practice). */
const PER_H = 0.5;

/** NH4+ + 2 O2 → NO3− + 2 H+ + H2O. The two equivalents follow from the ions. */
export const nitrification = defineProcess<Record<string, never>>({
  id: 'nitrification',
  label: 'nitrification',
  cites: ['wolfGladrow2007'],
  settings: () => ({}),
  reaction: () => new Reaction({ TAN: -1, NO3: 1 }),
  rate: (view) => PER_H * view.amounts[indexOf.TAN]!,
});
