import { say } from '../words/ledger';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import { PLENTIFUL_DIC, scarcity, scarcitySlope } from './scarcity';

/** Algae in corals and on rock take up carbon while the lights are on. */
export const photosynthesis = defineProcess<{ molPerH: number }>({
  id: 'photosynthesis',
  label: say.photosynthesis,
  role: 'life',
  cites: ['gattuso1999'],
  settings({ scenario, volumeL }) {
    const { grossMmolPerLPerDay } = scenario.photosynthesis;
    const { hours } = scenario.lights;
    if (grossMmolPerLPerDay === 0 || hours === 0) return null;
    return { molPerH: (grossMmolPerLPerDay * volumeL) / 1000 / hours };
  },
  reaction: () => new Reaction({ DIC: -1, organicC: 1 }),
  rate: (view, { molPerH }) =>
    view.light === 0 ? 0 : molPerH * view.light * scarcity(view.dicMolPerKg, PLENTIFUL_DIC),
  drift: ({ light, dicMolPerKg }, motion, { molPerH }) =>
    molPerH *
    (motion.light * scarcity(dicMolPerKg, PLENTIFUL_DIC) +
      light * scarcitySlope(dicMolPerKg, PLENTIFUL_DIC) * motion.dicMolPerKg),
});
