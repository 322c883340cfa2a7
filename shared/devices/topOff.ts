import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { passive, type Device, type DeviceKind, type Pipe } from './device';
import { firstFill, refill } from './reservoirMix';

function build(scenario: Scenario): Device {
  const { topOff, tank, start } = scenario;
  const pipe: Pipe = { id: 'topOff', label: 'top-off', from: 'reservoir', to: 'tank', kgPerH: 0 };
  const pumpKgPerH = (topOff.pumpLPerH * densityKgPerM3(tank.tempC, 0)) / 1000;
  const full = tank.volumeL;
  const low = full - topOff.deadBandL;
  let pumping = false;
  // Nobody refills more often than every hour.
  const everyH = topOff.refillEveryDays === 0 ? Infinity : Math.max(1, 24 * topOff.refillEveryDays);
  let refillAtH = NaN;

  const watch = (volumeL: number) => (pumping ? full - volumeL : volumeL - low);
  const firstRefillH = (timeH: number) =>
    nextDailyTimeH(timeH, topOff.refillHour, start.clockHour) + Math.max(0, everyH - 24);

  return {
    ...passive,
    id: 'topOff',
    vessels: [{ id: 'reservoir', contents: firstFill(scenario).contents }],
    pipes: [pipe],
    nextClockH: (timeH) => {
      if (Number.isNaN(refillAtH)) refillAtH = firstRefillH(timeH);
      return refillAtH;
    },
    watch: (view) => watch(view.volumeL),
    watchPerL: () => (pumping ? -1 : 1),
    act(view, plant) {
      if (view.timeH >= refillAtH) {
        refill(scenario, plant);
        refillAtH += everyH;
      }
      if (watch(view.volumeL) <= 0) pumping = !pumping;
      pipe.kgPerH = pumping && plant.waterKg('reservoir') > 0 ? pumpKgPerH : 0;
    },
  };
}

/** A level sensor with a dead band, a pump, and the reservoir it draws from. */
export const topOff: DeviceKind = {
  id: 'topOff',
  label: 'top-off',
  build: (scenario) => (scenario.topOff.reservoirL === 0 ? [] : [build(scenario)]),
};
