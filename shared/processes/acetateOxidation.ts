import { say } from '../words/ledger';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** CH3COO− + 2 O2 → 2 CO2 + OH− + H2O: alkalinity is there once the anion is gone. */
export const acetateOxidation = defineProcess<{ perH: number }>({
  id: 'acetateOxidation',
  label: say.acetateOxidation,
  role: 'exchange',
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { oxidationPerH } = scenario.filter;
    return oxidationPerH === 0 ? null : { perH: oxidationPerH };
  },
  reaction: () => new Reaction({ acetate: -1, DIC: 2 }),
  rate: (view, { perH }) => perH * view.amounts[indexOf.acetate]!,
  drift: (_view, motion, { perH }) => perH * motion.amounts[indexOf.acetate]!,
});
