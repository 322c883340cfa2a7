import { say } from '../words/ledger';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** Everything alive gives carbon dioxide back, day and night alike. */
export const respiration = defineProcess<{ molPerH: number }>({
  id: 'respiration',
  label: say.respiration,
  role: 'life',
  cites: ['gattuso1999'],
  settings({ scenario, volumeL }) {
    const { grossMmolPerLPerDay, respiredShare } = scenario.photosynthesis;
    const molPerH = (grossMmolPerLPerDay * respiredShare * volumeL) / 1000 / 24;
    return molPerH === 0 ? null : { molPerH };
  },
  reaction: () => new Reaction({ organicC: -1, DIC: 1 }),
  rate: (_view, { molPerH }) => molPerH,
});
