import { INSTANT_H } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { dissolve } from '../species/additives';
import { addScaled, solutionKg, type Block } from '../species/block';
import { pureWater } from '../water/mixWater';
import { DoserFaults } from './doserFaults';
import { DoseClock, givenMlPerDay, pulsesOf } from './doseTimes';
import { passive, type Device, type DeviceKind, type Pipe, type VesselId } from './device';

type Doser = Scenario['dosers'][number];

/** Grams per litre of finished stock: the powders take the place of some of the water. */
export function stockSolution({ recipe }: Doser, litres: number, tempC: number): Block {
  const stock = pureWater(litres, tempC);
  for (const { additive, gramsPerL } of recipe) {
    addScaled(stock, dissolve(additive, gramsPerL * litres), 1);
  }
  return stock;
}

function build(doser: Doser, index: number, scenario: Scenario): Device {
  const vessel: VesselId = `stock${index + 1}`;
  const full = stockSolution(doser, doser.stockL, scenario.tank.tempC);
  const kgPerL = solutionKg(full) / doser.stockL;
  const pulses = pulsesOf(doser.schedule, doser.mlPerDay);
  const openH = pulses.count * pulses.durationH;
  const openKgPerH = (givenMlPerDay(doser.schedule, doser.mlPerDay) / 1000 / openH) * kgPerL;
  const isMixedAs = ({ dosers: before }: Scenario) =>
    JSON.stringify(doser.recipe) === JSON.stringify(before[index]?.recipe);
  const clock = new DoseClock(pulses, doser.schedule, scenario.start.clockHour);
  const faults = new DoserFaults(scenario, index);
  const stuckKgPerH = ((doser.schedule.pumpMlPerMin * 60) / 1000) * kgPerL;
  const pipe: Pipe = {
    ...{ id: vessel, label: doser.name, role: 'pump', pump: index },
    ...{ from: vessel, to: 'tank', kgPerH: 0 },
  };
  const nextEdgeH = (timeH: number) => Math.min(clock.nextEdgeH(timeH), faults.nextEdgeH(timeH));
  // Between a pump's own edges its valve stays: with a dozen pumps most acts are another's.
  let [setH, untilH] = [NaN, NaN];
  const isSet = (timeH: number) => timeH >= setH && timeH < untilH - INSTANT_H;
  return {
    ...passive,
    id: vessel,
    vessels: [{ id: vessel, role: 'bottle', contents: full, isMixedAs }],
    pipes: [pipe],
    nextClockH: (timeH) => (isSet(timeH) ? untilH : nextEdgeH(timeH)),
    act(view, plant) {
      const empty = plant.waterKg(vessel) <= 0;
      if (!empty && isSet(view.timeH)) return;
      setH = view.timeH;
      untilH = nextEdgeH(setH);
      const fault = faults.at(view.timeH);
      // A pump that runs away empties its bottle; nobody puts in a new one.
      if (empty && !fault.stuckOn) plant.transfer('stockRefill', 'outside', vessel, full);
      const usual = clock.isOpen(view.timeH) ? openKgPerH * fault.times : 0;
      pipe.kgPerH = !fault.stuckOn ? usual : empty ? 0 : stuckKgPerH;
    },
  };
}

/** Each pump gives its daily dose by its schedule; an empty bottle is replaced by a full one. */
export const dosers: DeviceKind = {
  id: 'dosers',
  build: (scenario) =>
    scenario.dosers.flatMap((doser, i) =>
      doser.mlPerDay > 0 || new DoserFaults(scenario, i).canStick
        ? [build(doser, i, scenario)]
        : [],
    ),
};
