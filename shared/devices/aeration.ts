import { Windows } from '../faults/windows';
import { passive, type DeviceKind } from './device';

/**
 * Pumps, skimmer and air stones: they stop with the mains, and the keeper may turn them up. What
 * moves air without mains (a battery, a jug) comes on top of whatever there is.
 */
export const aeration: DeviceKind = {
  id: 'aeration',
  build({ gas, faults, responses, start: { clockHour } }) {
    const cuts = new Windows(faults, 'powerCut', clockHour);
    const turnedUp = new Windows(responses, 'aerate', clockHour);
    const byHand = new Windows(responses, 'batteryAir', clockHour);
    const all = [cuts, turnedUp, byHand];
    return [
      {
        ...passive,
        id: 'aeration',
        nextClockH: (timeH) => Math.min(...all.map((windows) => windows.nextEdgeH(timeH))),
        act(view, plant) {
          const cut = cuts.at(view.timeH);
          const driven = turnedUp.at(view.timeH)?.kLaPerH ?? gas.kLaPerH;
          plant.setPower(cut === undefined);
          const runs = cut ? (gas.kLaPerH * cut.gasPercent) / 100 : driven;
          plant.setAeration(runs + (byHand.at(view.timeH)?.kLaPerH ?? 0));
        },
      },
    ];
  },
};
