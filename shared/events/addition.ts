import { dissolve } from '../species/additives';
import type { EventKind, TankEvent } from './event';

/** A weighed amount, dissolved and poured in at once. */
export const addition: EventKind = {
  id: 'addition',
  label: 'one-off additions',
  occurrences({ additions, start, days }) {
    return additions
      .filter(({ grams }) => grams > 0)
      .map(({ day, hour, additive, grams }): TankEvent => ({
        timeH: (day - 1) * 24 + hour - start.clockHour,
        apply(_view, plant) {
          plant.transfer('addition', 'outside', 'tank', dissolve(additive, grams));
        },
      }))
      .filter(({ timeH }) => timeH >= 0 && timeH <= days * 24)
      .sort((a, b) => a.timeH - b.timeH);
  },
};
