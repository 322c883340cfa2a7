import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** CO2 moves between the room's moist air and the water: kLa·K0·Δp for each kg of water. */
export const gasExchange = defineProcess<{ kLaPerH: number }>({
  id: 'gasExchange',
  label: 'gas exchange',
  cites: ['weiss1974'],
  settings: ({ scenario }) => {
    const { kLaPerH } = scenario.gas;
    return kLaPerH === 0 ? null : { kLaPerH };
  },
  reaction: () => new Reaction({ airCO2: -1, DIC: 1 }),
  rate: (view, { kLaPerH }) =>
    kLaPerH * view.k0 * (view.pco2AirUatm - view.pco2Uatm) * 1e-6 * view.solutionKg,
});
