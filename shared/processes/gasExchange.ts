import { say } from '../words/ledger';
import { co2Enhancement, Film } from '../seawater/enhancement';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import type { View } from './view';

interface Settings {
  /** Water surface that reactions in its film help; undefined when they are left out. */
  readonly surfaceM2: number | undefined;
  readonly film: Film;
}

function enhancement(view: View, surfaceM2: number, film: Film): number {
  if (view.kLaPerH === 0) return 1;
  const transferMPerH = (view.kLaPerH * view.volumeL) / 1000 / surfaceM2;
  return co2Enhancement(view.constants, view.hTotal, film.at(view.tempC), transferMPerH);
}

/** CO2 moves between the room's moist air and the water: kLa·K0·Δp for each kg of water. */
export const gasExchange = defineProcess<Settings>({
  id: 'gasExchange',
  label: say.gasExchange,
  role: 'exchange',
  cites: ['weiss1974', 'hooverBerkshire1969', 'johnson1982', 'jahne1987'],
  settings: ({ scenario }) => {
    const { kLaPerH, enhancement } = scenario.gas;
    const isTurnedUp = scenario.responses.some(
      ({ kind }) => kind === 'aerate' || kind === 'batteryAir',
    );
    if (kLaPerH === 0 && !isTurnedUp) return null;
    return {
      surfaceM2: enhancement === 'on' ? scenario.evaporation.surfaceM2 : undefined,
      film: new Film(),
    };
  },
  reaction: () => new Reaction({ airCO2: -1, DIC: 1 }),
  rate(view, { surfaceM2, film }) {
    const faster = surfaceM2 === undefined ? 1 : enhancement(view, surfaceM2, film);
    const gapAtm = (view.pco2AirUatm - view.pco2Uatm) * 1e-6;
    return faster * view.kLaPerH * view.k0 * gapAtm * view.solutionKg;
  },
});
