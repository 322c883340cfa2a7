import { say } from '../words/ledger';
import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { pco2WetUatm } from '../seawater/gas';
import { Windows } from '../faults/windows';
import type { Plant } from '../devices/device';
import type { View } from '../processes/view';
import type { Block } from '../species/block';
import { mixWater } from '../water/mixWater';
import type { EventKind, TankEvent } from './event';

type Fault = Scenario['faults'][number];

/** New water from the wrong bag, or weighed wrongly. */
function mixedWrongly(scenario: Scenario, wrong: Fault, volumeL: number): Block {
  const { waterChanges } = scenario;
  const { salt } = waterChanges;
  const scale = salt.atSalinityPractical / wrong.newWaterSalinity;
  const mixed = {
    ...waterChanges,
    salinityPractical: wrong.newWaterSalinity,
    salt: { ...salt, alkalinityDkh: wrong.newWaterDkh * scale },
  };
  return newWater({ ...scenario, waterChanges: mixed }, volumeL);
}

/** New water from the bag: everything in it follows the salinity it is mixed to. */
export function newWater(scenario: Scenario, volumeL: number): Block {
  const { waterChanges, room } = scenario;
  const { salt, salinityPractical, newWaterTempC: tempC, freshPhNbs } = waterChanges;
  const scale = salinityPractical / salt.atSalinityPractical;
  return mixWater({
    volumeL,
    tempC,
    salinityPractical,
    alkalinityDkh: salt.alkalinityDkh * scale,
    calciumMgPerL: salt.calciumMgPerL * scale,
    magnesiumMgPerL: salt.magnesiumMgPerL * scale,
    carbon:
      waterChanges.newWater === 'fresh'
        ? { phNbs: freshPhNbs }
        : { pco2Uatm: pco2WetUatm(room.co2Ppm, tempC, salinityPractical) },
  });
}

/** A tank that has run low gives what it has, but for a tenth. */
export function exchange(
  row: string,
  litres: number,
  fresh: Block,
  view: View,
  plant: Plant,
): void {
  const drainedShare = Math.min(0.9, litres / view.volumeL);
  const drained = view.amounts.map((amount) => amount * drainedShare);
  plant.transfer(row, 'tank', 'outside', drained);
  plant.transfer(row, 'outside', 'tank', fresh);
}

/** Part of the tank is drained and the same volume of new water poured in. */
export function changeOfWater(scenario: Scenario, percent: number): (timeH: number) => TankEvent {
  const litres = (percent / 100) * scenario.tank.volumeL;
  const fresh = newWater(scenario, litres);
  const wrong = new Windows(scenario.faults, 'wrongNewWater', scenario.start.clockHour);
  return (timeH) => ({
    timeH,
    apply(view, plant) {
      const fault = wrong.at(view.timeH);
      const poured = fault ? mixedWrongly(scenario, fault, litres) : fresh;
      exchange('waterChange', litres, poured, view, plant);
    },
  });
}

export const waterChange: EventKind = {
  id: 'waterChange',
  label: say.waterChange,
  role: 'waterChange',
  occurrences(scenario) {
    const { percent, everyDays, hour } = scenario.waterChanges;
    if (percent < 0.01) return [];
    const { clockHour } = scenario.start;
    const changeAt = changeOfWater(scenario, percent);
    const first = nextDailyTimeH(0, hour, clockHour) + Math.max(0, everyDays - 1) * 24;
    const count = Math.max(0, Math.floor((scenario.days * 24 - first) / (everyDays * 24)) + 1);
    return Array.from({ length: count }, (_, i) => changeAt(first + i * everyDays * 24));
  },
};
