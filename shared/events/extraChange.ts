import { say } from '../words/ledger';
import { momentH } from '../scenario/clock';
import { inOrder, type EventKind } from './event';
import { exchange, newWater } from './waterChange';

/** A water change that was not in the plan, with the plan's own new water. */
export const extraChange: EventKind = {
  id: 'extraChange',
  label: say.extraChange,
  role: 'waterChange',
  occurrences: (scenario) =>
    inOrder(
      scenario.responses
        .filter(({ kind, percent }) => kind === 'extraChange' && percent > 0)
        .map(({ percent, ...when }) => {
          const litres = (percent / 100) * scenario.tank.volumeL;
          const fresh = newWater(scenario, litres);
          return {
            timeH: momentH(when, scenario.start.clockHour),
            apply: (view, plant) => exchange('extraChange', litres, fresh, view, plant),
          };
        }),
      scenario,
    ),
};
