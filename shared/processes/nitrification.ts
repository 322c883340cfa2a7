import { indexOf } from '../species/block';
import { defineProcess } from './process';

/** NH4+ + 2 O2 → NO3− + 2 H+ + H2O. The two equivalents follow from the ions. */
export const nitrification = defineProcess<{ perH: number }>({
  id: 'nitrification',
  label: 'nitrification',
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { nitrificationPerH } = scenario.filter;
    return nitrificationPerH === 0 ? null : { perH: nitrificationPerH };
  },
  reaction: () => ({ TAN: -1, NO3: 1 }),
  rate: (view, { perH }) => perH * view.amounts[indexOf.TAN]!,
});
