import { Windows } from '../faults/windows';
import type { Scenario } from '../scenario/schema';
import type { Device } from './device';

/** A device whose pumps stand still while there is no mains electricity. */
export function stopsInPowerCuts(device: Device, { faults, start }: Scenario): Device {
  const cuts = new Windows(faults, 'powerCut', start.clockHour);
  if (cuts.all.length === 0) return device;
  const usualKgPerH = device.pipes.map(({ kgPerH }) => kgPerH);
  return {
    ...device,
    nextClockH: (timeH) => Math.min(device.nextClockH(timeH), cuts.nextEdgeH(timeH)),
    act(view, plant) {
      device.act(view, plant);
      const stopped = cuts.at(view.timeH) !== undefined;
      device.pipes.forEach((pipe, i) => (pipe.kgPerH = stopped ? 0 : usualKgPerH[i]!));
    },
  };
}
