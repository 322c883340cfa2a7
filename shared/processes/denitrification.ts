import { say } from '../words/ledger';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** NO3− + 1¼ CH2O → ½ N2 + 1¼ CO2 + …; the equivalent that comes back follows from the ions. */
export const denitrification = defineProcess<{ perH: number }>({
  id: 'denitrification',
  label: say.denitrification,
  role: 'life',
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { denitrificationPerDay } = scenario.filter;
    return denitrificationPerDay === 0 ? null : { perH: denitrificationPerDay / 24 };
  },
  reaction: () => new Reaction({ NO3: -1, n2: 0.5, organicC: -1.25, DIC: 1.25 }),
  rate: (view, { perH }) => perH * view.amounts[indexOf.NO3]!,
  drift: (_view, motion, { perH }) => perH * motion.amounts[indexOf.NO3]!,
});
