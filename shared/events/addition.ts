import { dissolve, type AdditiveId } from '../species/additives';
import type { EventKind, TankEvent } from './event';

/** A weighed amount, dissolved and poured in at once. */
export const pouredIn = (timeH: number, additive: AdditiveId, grams: number): TankEvent => ({
  timeH,
  apply(_view, plant) {
    plant.transfer('addition', 'outside', 'tank', dissolve(additive, grams));
  },
});

export const addition: EventKind = {
  id: 'addition',
  label: 'one-off additions',
  occurrences({ additions, start, days }) {
    return additions
      .filter(({ grams }) => grams > 0)
      .map(({ day, hour, additive, grams }) =>
        pouredIn((day - 1) * 24 + hour - start.clockHour, additive, grams),
      )
      .filter(({ timeH }) => timeH >= 0 && timeH <= days * 24)
      .sort((a, b) => a.timeH - b.timeH);
  },
};
