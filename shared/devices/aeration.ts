import { Windows } from '../faults/windows';
import { passive, type DeviceKind } from './device';

/** Pumps, skimmer and air stones: they stop with the mains, and the keeper may turn them up. */
export const aeration: DeviceKind = {
  id: 'aeration',
  build({ gas, faults, responses, start: { clockHour } }) {
    const cuts = new Windows(faults, 'powerCut', clockHour);
    const turnedUp = new Windows(responses, 'aerate', clockHour);
    return [
      {
        ...passive,
        id: 'aeration',
        nextClockH: (timeH) => Math.min(cuts.nextEdgeH(timeH), turnedUp.nextEdgeH(timeH)),
        act(view, plant) {
          const cut = cuts.at(view.timeH);
          const driven = turnedUp.at(view.timeH)?.kLaPerH ?? gas.kLaPerH;
          plant.setPower(cut === undefined);
          plant.setAeration(cut ? (gas.kLaPerH * cut.gasPercent) / 100 : driven);
        },
      },
    ];
  },
};
