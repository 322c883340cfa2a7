import { nextWindowEdgeH, withinDailyWindow } from '../scenario/clock';
import { passive, type DeviceKind } from './device';

/** A square wave over the photoperiod. */
export const lights: DeviceKind = {
  id: 'lights',
  label: 'lights',
  build({ lights: { onHour, hours }, start: { clockHour } }) {
    return [
      {
        ...passive,
        id: 'lights',
        nextClockH: (timeH) => nextWindowEdgeH(timeH, onHour, hours, clockHour),
        act(view, plant) {
          plant.setLight(withinDailyWindow(view.timeH, onHour, hours, clockHour) ? 1 : 0);
        },
      },
    ];
  },
};
