import { densityKgPerM3 } from '../seawater/density';
import { passive, type DeviceKind } from './device';

/** A fixed rate; what is typed in litres is fresh water at the tank's temperature. */
export const evaporation: DeviceKind = {
  id: 'evaporation',
  label: 'evaporation',
  build({ evaporation: { litresPerDay }, tank: { tempC } }) {
    if (litresPerDay === 0) return [];
    const kgPerH = (litresPerDay * densityKgPerM3(tempC, 0)) / 1000 / 24;
    return [
      {
        ...passive,
        id: 'evaporation',
        pipes: [
          {
            id: 'evaporation',
            label: 'evaporation',
            from: 'tank',
            to: 'outside',
            vapour: true,
            kgPerH,
          },
        ],
      },
    ];
  },
};
