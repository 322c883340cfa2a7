import { nextWindowEdgeH, withinDailyWindow } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { dissolve } from '../species/additives';
import { addScaled, solutionKg, type Block } from '../species/block';
import { pureWater } from '../water/mixWater';
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
  const openKgPerH = (doser.mlPerDay / 1000 / doser.hours) * kgPerL;
  const pipe: Pipe = {
    id: vessel,
    label: doser.name,
    from: vessel,
    to: 'tank',
    kgPerH: 0,
  };
  const { clockHour } = scenario.start;
  return {
    ...passive,
    id: vessel,
    vessels: [{ id: vessel, contents: full }],
    pipes: [pipe],
    nextClockH: (timeH) => nextWindowEdgeH(timeH, doser.fromHour, doser.hours, clockHour),
    act(view, plant) {
      if (plant.waterKg(vessel) <= 0) plant.transfer('stockRefill', 'outside', vessel, full);
      const open = withinDailyWindow(view.timeH, doser.fromHour, doser.hours, clockHour);
      pipe.kgPerH = open ? openKgPerH : 0;
    },
  };
}

/** Each pump drips its daily dose evenly over its hours; an empty bottle is replaced by a full one. */
export const dosers: DeviceKind = {
  id: 'dosers',
  label: 'dosing pumps',
  build: (scenario) =>
    scenario.dosers.flatMap((doser, i) => (doser.mlPerDay > 0 ? [build(doser, i, scenario)] : [])),
};
