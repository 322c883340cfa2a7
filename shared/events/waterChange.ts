import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { pco2WetUatm } from '../seawater/gas';
import type { Block } from '../species/block';
import { mixWater } from '../water/mixWater';
import type { EventKind, TankEvent } from './event';

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

/** Part of the tank is drained and the same volume of new water poured in. */
export function changeOfWater(scenario: Scenario, percent: number): (timeH: number) => TankEvent {
  const fraction = percent / 100;
  const fresh = newWater(scenario, fraction * scenario.tank.volumeL);
  return (timeH) => ({
    timeH,
    apply(view, plant) {
      // A tank that has run low gives what it has, but for a tenth.
      const drainedShare = Math.min(0.9, (fraction * scenario.tank.volumeL) / view.volumeL);
      const drained = view.amounts.map((amount) => amount * drainedShare);
      plant.transfer('waterChange', 'tank', 'outside', drained);
      plant.transfer('waterChange', 'outside', 'tank', fresh);
    },
  });
}

export const waterChange: EventKind = {
  id: 'waterChange',
  label: 'water changes',
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
