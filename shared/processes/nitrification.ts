import { say } from '../words/ledger';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** Nitrifiers slow down in sour water and stop (common practice): pH, total scale. */
const FULL_ABOVE_PH = 7;
const STOPPED_BELOW_PH = 6;

/** NH4+ + 2 O2 → NO3− + 2 H+ + H2O. The two equivalents follow from the ions. */
export const nitrification = defineProcess<{ perH: number }>({
  id: 'nitrification',
  label: say.nitrification,
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { nitrificationPerH } = scenario.filter;
    return nitrificationPerH === 0 ? null : { perH: nitrificationPerH };
  },
  reaction: () => new Reaction({ TAN: -1, NO3: 1 }),
  rate(view, { perH }) {
    const awake = (view.phTotal - STOPPED_BELOW_PH) / (FULL_ABOVE_PH - STOPPED_BELOW_PH);
    return perH * view.amounts[indexOf.TAN]! * Math.max(0, Math.min(1, awake));
  },
});
