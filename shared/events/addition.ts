import { say } from '../words/ledger';
import { momentH } from '../scenario/clock';
import { dissolve, type AdditiveId } from '../species/additives';
import { inOrder, type EventKind, type TankEvent } from './event';

/** A weighed amount, dissolved and poured in at once. */
export const pouredIn = (timeH: number, additive: AdditiveId, grams: number): TankEvent => ({
  timeH,
  apply: (_view, plant) => plant.transfer('addition', 'outside', 'tank', dissolve(additive, grams)),
});

export const addition: EventKind = {
  id: 'addition',
  label: say.addition,
  role: 'byHand',
  occurrences: (scenario) =>
    inOrder(
      scenario.additions
        .filter(({ grams }) => grams > 0)
        .map(({ additive, grams, ...when }) =>
          pouredIn(momentH(when, scenario.start.clockHour), additive, grams),
        ),
      scenario,
    ),
};
