import { say } from '../words/ledger';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** HCOO− + ½ O2 → CO2 + OH−: alkalinity is there once the anion is gone. */
export const formateOxidation = defineProcess<{ perH: number }>({
  id: 'formateOxidation',
  label: say.formateOxidation,
  role: 'exchange',
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { oxidationPerH } = scenario.filter;
    return oxidationPerH === 0 ? null : { perH: oxidationPerH };
  },
  reaction: () => new Reaction({ formate: -1, DIC: 1 }),
  rate: (view, { perH }) => perH * view.amounts[indexOf.formate]!,
  drift: (_view, motion, { perH }) => perH * motion.amounts[indexOf.formate]!,
});
