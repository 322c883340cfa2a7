import { say } from '../words/ledger';
import { momentH } from '../scenario/clock';
import { dissolve } from '../species/additives';
import { inOrder, type EventKind } from './event';

/** Too much of something, poured in by hand. */
export const overdose: EventKind = {
  id: 'overdose',
  label: say.overdose,
  role: 'byHand',
  occurrences: (scenario) =>
    inOrder(
      scenario.faults
        .filter(({ kind, grams }) => kind === 'overdose' && grams > 0)
        .map(({ additive, grams, ...when }) => ({
          timeH: momentH(when, scenario.start.clockHour),
          apply: (_view, plant) =>
            plant.transfer('overdose', 'outside', 'tank', dissolve(additive, grams)),
        })),
      scenario,
    ),
};
