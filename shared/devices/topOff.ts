import { say } from '../words/ledger';
import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { solutionKg } from '../species/block';
import { passive, type Device, type DeviceKind, type Pipe, type Plant } from './device';
import { LevelSwitch } from './levelSwitch';
import { ReservoirAir } from './reservoirAir';
import { ReservoirFaults } from './reservoirFaults';
import { refill, reservoir } from './reservoirMix';
import { RunLimit } from './runLimit';
import { TopOffFaults } from './topOffFaults';

/** A litre of the mix is a litre of water with what is dissolved in it. */
const kgPerKgOfWater = (plant: Plant): number =>
  solutionKg(plant.contents('reservoir')) / plant.waterKg('reservoir');

function build(scenario: Scenario): Device {
  const { topOff, tank, start } = scenario;
  const pipe: Pipe = {
    id: 'topOff',
    label: say.topOff,
    role: 'topOff',
    from: 'reservoir',
    to: 'tank',
    kgPerH: 0,
  };
  const kgPerL = densityKgPerM3(tank.tempC, 0) / 1000;
  const level = new LevelSwitch(scenario);
  const limit = new RunLimit(
    { minPerH: topOff.runLimitMinPerH, minPerDay: topOff.runLimitMinPerDay },
    start.clockHour,
  );
  const air = new ReservoirAir(scenario);
  const mix = new ReservoirFaults(scenario);
  const faults = new TopOffFaults(scenario);
  const memory = { running: false, primed: false, refillAtH: NaN, everyH: NaN, refillHour: NaN };
  // Nobody refills more often than every hour.
  const everyH = topOff.refillEveryDays === 0 ? Infinity : Math.max(1, 24 * topOff.refillEveryDays);
  const firstRefillH = (timeH: number) =>
    nextDailyTimeH(timeH, topOff.refillHour, start.clockHour) + Math.max(0, everyH - 24);

  return {
    ...passive,
    id: 'topOff',
    vessels: [reservoir(scenario)],
    pipes: [pipe],
    memory: [memory, level.memory, limit.memory, air.memory, mix.memory],
    nextClockH(timeH) {
      const { refillHour } = topOff;
      // Another rhythm than the one that is remembered begins now.
      if (memory.everyH !== everyH || memory.refillHour !== refillHour) {
        Object.assign(memory, { everyH, refillHour, refillAtH: firstRefillH(timeH) });
      }
      return Math.min(
        memory.refillAtH,
        air.nextClockH(timeH),
        limit.nextClockH(timeH, memory.running),
        mix.nextEdgeH(timeH),
        faults.nextEdgeH(timeH),
      );
    },
    watch: (view) => level.signal(view.volumeL),
    watchPerL: () => level.signalPerL(),
    act(view, plant) {
      const fault = faults.at(view.timeH);
      limit.note(view.timeH, memory.running);
      air.act(view.timeH, plant);
      if (view.timeH >= memory.refillAtH) {
        if (!fault.empty) refill(mix.recipe(view.timeH), plant);
        memory.refillAtH += memory.everyH;
      }
      mix.act(view.timeH, plant);
      level.look(view.volumeL, fault);
      const filled = plant.waterKg('reservoir') > 0;
      const held = !fault.passesRunLimit && !limit.allows();
      memory.running = filled && fault.powered && level.calls && !held;
      memory.primed = filled && (memory.primed || memory.running);
      const drips = memory.primed ? topOff.siphonLPerH : 0;
      const siphonLPerH = filled ? (fault.siphonLPerH ?? drips) : 0;
      const litresPerH = Math.max(memory.running ? topOff.pumpLPerH : 0, siphonLPerH);
      pipe.kgPerH = litresPerH > 0 ? litresPerH * kgPerL * kgPerKgOfWater(plant) : 0;
    },
  };
}

/**
 * A level sensor with a dead band, a pump with a second switch and run-time limits, and the
 * reservoir it draws from; an outlet that hangs low goes on by itself once the pump has primed it.
 */
export const topOff: DeviceKind = {
  id: 'topOff',
  build: (scenario) => (scenario.topOff.reservoirL === 0 ? [] : [build(scenario)]),
};
