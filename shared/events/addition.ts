import { momentH } from '../scenario/clock';
import { dissolve } from '../species/additives';
import { inOrder, type EventKind } from './event';

/** A weighed amount, dissolved and poured in at once. */
export const addition: EventKind = {
  id: 'addition',
  label: 'one-off additions',
  occurrences: (scenario) =>
    inOrder(
      scenario.additions
        .filter(({ grams }) => grams > 0)
        .map(({ additive, grams, ...when }) => ({
          timeH: momentH(when, scenario.start.clockHour),
          apply: (_view, plant) =>
            plant.transfer('addition', 'outside', 'tank', dissolve(additive, grams)),
        })),
      scenario,
    ),
};
