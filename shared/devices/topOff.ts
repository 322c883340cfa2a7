import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { passive, type Device, type DeviceKind, type Pipe } from './device';
import { firstFill, refill } from './reservoirMix';
import { ReservoirAir } from './reservoirAir';
import { RunLimit } from './runLimit';

function build(scenario: Scenario): Device {
  const { topOff, tank, start } = scenario;
  const pipe: Pipe = { id: 'topOff', label: 'top-off', from: 'reservoir', to: 'tank', kgPerH: 0 };
  const kgPerL = densityKgPerM3(tank.tempC, 0) / 1000;
  const full = tank.volumeL;
  const low = full - topOff.deadBandL;
  const cutOff = topOff.secondSwitchL > 0 ? full + topOff.secondSwitchL : Infinity;
  const limit = new RunLimit(
    { minPerH: topOff.runLimitMinPerH, minPerDay: topOff.runLimitMinPerDay },
    start.clockHour,
  );
  const air = new ReservoirAir(scenario);
  let wanted = false;
  let running = false;
  let primed = false;
  // Nobody refills more often than every hour.
  const everyH = topOff.refillEveryDays === 0 ? Infinity : Math.max(1, 24 * topOff.refillEveryDays);
  let refillAtH = NaN;

  const watch = (volumeL: number) => (wanted ? full - volumeL : volumeL - low);
  const firstRefillH = (timeH: number) =>
    nextDailyTimeH(timeH, topOff.refillHour, start.clockHour) + Math.max(0, everyH - 24);

  return {
    ...passive,
    id: 'topOff',
    vessels: [{ id: 'reservoir', contents: firstFill(scenario).contents }],
    pipes: [pipe],
    nextClockH: (timeH) => {
      if (Number.isNaN(refillAtH)) refillAtH = firstRefillH(timeH);
      return Math.min(refillAtH, air.nextClockH(timeH), limit.nextClockH(timeH, running));
    },
    watch: (view) => watch(view.volumeL),
    watchPerL: () => (wanted ? -1 : 1),
    act(view, plant) {
      limit.note(view.timeH, running);
      air.act(view.timeH, plant);
      if (view.timeH >= refillAtH) {
        refill(scenario, plant);
        refillAtH += everyH;
      }
      if (watch(view.volumeL) <= 0) wanted = !wanted;
      const filled = plant.waterKg('reservoir') > 0;
      running = wanted && filled && view.volumeL < cutOff && limit.allows();
      primed = filled && (primed || running);
      const litresPerH = running ? topOff.pumpLPerH : primed ? topOff.siphonLPerH : 0;
      pipe.kgPerH = litresPerH * kgPerL;
    },
  };
}

/**
 * A level sensor with a dead band, a pump with a second switch and run-time limits, and the
 * reservoir it draws from; an outlet that hangs low goes on by itself once the pump has primed it.
 */
export const topOff: DeviceKind = {
  id: 'topOff',
  label: 'top-off',
  build: (scenario) => (scenario.topOff.reservoirL === 0 ? [] : [build(scenario)]),
};
