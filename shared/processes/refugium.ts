import { say } from '../words/ledger';
import { hoursOpenAround } from './hoursOpenAround';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import { QUOTIENT_H } from './quotient';
import { PLENTIFUL_DIC, scarcity, scarcitySlope } from './scarcity';

interface Settings {
  readonly molPerH: number;
  readonly fromClockHour: number;
  readonly hours: number;
  readonly startClockHour: number;
}

const litAt = (timeH: number, { startClockHour, fromClockHour, hours }: Settings): number =>
  hoursOpenAround(timeH + startClockHour, fromClockHour, hours);

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
  rate(view, settings) {
    if (!view.powered) return 0;
    const lit = litAt(view.timeH, settings);
    return settings.molPerH * lit * scarcity(view.dicMolPerKg, PLENTIFUL_DIC);
  },
  drift({ powered, timeH, dicMolPerKg }, motion, settings) {
    if (!powered) return 0;
    const lit = litAt(timeH, settings);
    if (lit === 0) return 0;
    const litPerH =
      (litAt(timeH + QUOTIENT_H, settings) - litAt(timeH - QUOTIENT_H, settings)) /
      (2 * QUOTIENT_H);
    return (
      settings.molPerH *
      (litPerH * scarcity(dicMolPerKg, PLENTIFUL_DIC) +
        lit * scarcitySlope(dicMolPerKg, PLENTIFUL_DIC) * motion.dicMolPerKg)
    );
  },
});
