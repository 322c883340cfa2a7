import { say } from '../words/ledger';
import { newWater } from '../events/waterChange';
import { densityKgPerM3 } from '../seawater/density';
import { solutionKg } from '../species/block';
import { stopsInPowerCuts } from './powerCut';
import { passive, type Device, type DeviceKind } from './device';

/** As much new water in as old water out, all day long. */
export const continuousChange: DeviceKind = {
  id: 'continuousChange',
  build(scenario) {
    const { continuousLPerDay } = scenario.waterChanges;
    if (continuousLPerDay === 0) return [];
    const { tank } = scenario;
    const litre = newWater(scenario, 1);
    const litreKg = solutionKg(litre);
    const outKgPerL = densityKgPerM3(tank.tempC, tank.salinityPractical) / 1000;
    const device: Device = {
      ...passive,
      id: 'continuousChange',
      pipes: [
        {
          id: 'newWater',
          label: say.newWater,
          role: 'waterChange',
          from: 'outside',
          to: 'tank',
          perKg: litre.map((amount) => amount / litreKg),
          kgPerH: (continuousLPerDay * litreKg) / 24,
        },
        {
          id: 'oldWater',
          label: say.oldWater,
          role: 'waterChange',
          from: 'tank',
          to: 'outside',
          kgPerH: (continuousLPerDay * outKgPerL) / 24,
        },
      ],
    };
    return [stopsInPowerCuts(device, scenario)];
  },
};
