import { say } from '../words/ledger';
import { factorAt } from '../scenario/factors';
import type { Scenario } from '../scenario/schema';
import { densityKgPerM3 } from '../seawater/density';
import { evaporationKgPerM2PerH } from '../seawater/evaporation';
import type { View } from '../processes/view';
import { passive, type DeviceKind, type Pipe } from './device';

/** What is typed in litres is fresh water at the start's temperature. */
const fixedKgPerH = ({ evaporation, tank }: Scenario) =>
  (evaporation.litresPerDay * densityKgPerM3(tank.tempC, 0)) / 1000 / 24;

const byAirKgPerH = ({ evaporation }: Scenario, { tempC, salinityPractical }: View) =>
  evaporation.surfaceM2 *
  evaporationKgPerM2PerH({
    waterTempC: tempC,
    airTempC: evaporation.airTempC,
    relativeHumidity: evaporation.humidityPercent / 100,
    salinityPractical,
  });

/** Water that leaves as vapour: at a measured rate, or as the room's air takes it. */
export const evaporation: DeviceKind = {
  id: 'evaporation',
  build(scenario, factors) {
    const { mode, litresPerDay } = scenario.evaporation;
    if (mode === 'fixed' && litresPerDay === 0) return [];
    const pipe: Pipe = {
      id: 'evaporation',
      label: say.evaporation,
      role: 'exchange',
      from: 'tank',
      to: 'outside',
      vapour: true,
      kgPerH: 0,
    };
    const varies = mode === 'byAir' || factors.evaporation !== undefined;
    return [
      {
        ...passive,
        id: 'evaporation',
        pipes: [pipe],
        // The rate is looked at again every hour; within it, it stays.
        nextClockH: (timeH) => (varies ? Math.floor(timeH + 1e-9) + 1 : Infinity),
        act(view) {
          const kgPerH = mode === 'fixed' ? fixedKgPerH(scenario) : byAirKgPerH(scenario, view);
          pipe.kgPerH = kgPerH * Math.max(0, factorAt(factors.evaporation, view.timeH));
        },
      },
    ];
  },
};
