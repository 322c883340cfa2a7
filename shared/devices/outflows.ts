import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { passive, type Device, type DeviceKind } from './device';

/** Litres of tank water a day, as kilograms an hour. */
const kgPerH = (litresPerDay: number, { tank }: Scenario) =>
  (litresPerDay * densityKgPerM3(tank.tempC, tank.salinityPractical)) / 1000 / 24;

const steady = (id: string, label: string, litresPerDay: number, scenario: Scenario): Device[] =>
  litresPerDay === 0
    ? []
    : [
        {
          ...passive,
          id,
          pipes: [
            { id, label, from: 'tank', to: 'outside', kgPerH: kgPerH(litresPerDay, scenario) },
          ],
        },
      ];

/** Wet skimming: foam carries water and all that is in it. */
export const skimming: DeviceKind = {
  id: 'skimming',
  label: 'wet skimming',
  build: (scenario) =>
    steady('skimming', 'wet skimming', scenario.outflows.skimmingLPerDay, scenario),
};

export const leak: DeviceKind = {
  id: 'leak',
  label: 'leak',
  build: (scenario) => steady('leak', 'leak', scenario.outflows.leakLPerDay, scenario),
};
