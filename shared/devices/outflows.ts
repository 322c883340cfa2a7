import { say } from '../words/ledger';
import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { stopsInPowerCuts } from './powerCut';
import { passive, type Device, type DeviceKind, type Pipe } from './device';

/** Litres of tank water a day, as kilograms an hour. */
const kgPerH = (litresPerDay: number, { tank }: Scenario) =>
  (litresPerDay * densityKgPerM3(tank.tempC, tank.salinityPractical)) / 1000 / 24;

function steady(id: string, label: string, litresPerDay: number, scenario: Scenario): Device[] {
  if (litresPerDay === 0) return [];
  const pipe: Pipe = { id, label, role: 'lost', from: 'tank', to: 'outside', kgPerH: 0 };
  pipe.kgPerH = kgPerH(litresPerDay, scenario);
  return [{ ...passive, id, pipes: [pipe] }];
}

/** Wet skimming: foam carries water and all that is in it. */
export const skimming: DeviceKind = {
  id: 'skimming',
  build: (scenario) =>
    steady('skimming', say.skimming, scenario.outflows.skimmingLPerDay, scenario).map((device) =>
      stopsInPowerCuts(device, scenario),
    ),
};

export const leak: DeviceKind = {
  id: 'leak',
  build: (scenario) => steady('leak', say.leak, scenario.outflows.leakLPerDay, scenario),
};
