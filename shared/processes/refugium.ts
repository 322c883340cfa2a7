import { say } from '../words/ledger';
import { hoursOpenAround } from './hoursOpenAround';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import { PLENTIFUL_DIC, scarcity } from './scarcity';

interface Settings {
  readonly molPerH: number;
  readonly fromClockHour: number;
  readonly hours: number;
  readonly startClockHour: number;
}

/** Algae with a light of their own, harvested: the carbon they take does not come back. */
export const refugium = defineProcess<Settings>({
  id: 'refugium',
  label: say.refugium,
  role: 'life',
  cites: ['commonPractice'],
  settings({ scenario, volumeL }) {
    const { refugiumMmolPerLPerDay, refugiumFromHour, refugiumHours } = scenario.photosynthesis;
    if (refugiumMmolPerLPerDay === 0 || refugiumHours === 0) return null;
    return {
      molPerH: (refugiumMmolPerLPerDay * volumeL) / 1000 / refugiumHours,
      fromClockHour: refugiumFromHour,
      hours: refugiumHours,
      startClockHour: scenario.start.clockHour,
    };
  },
  reaction: () => new Reaction({ DIC: -1, organicC: 1 }),
  rate(view, { molPerH, fromClockHour, hours, startClockHour }) {
    if (!view.powered) return 0;
    const lit = hoursOpenAround(view.timeH + startClockHour, fromClockHour, hours);
    return molPerH * lit * scarcity(view.dicMolPerKg, PLENTIFUL_DIC);
  },
});
