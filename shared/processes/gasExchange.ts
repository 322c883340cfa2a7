import { say } from '../words/ledger';
import { co2Enhancement, Film, type Enhancement } from '../seawater/enhancement';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import type { View } from './view';

interface Settings {
  /** Water surface that reactions in its film help; undefined when they are left out. */
  readonly surfaceM2: number | undefined;
  readonly film: Film;
  /** How much faster they make it: 1 where they are left out. */
  readonly faster: Enhancement & { hTotal: number; transferMPerH: number };
}

function enhancement(view: View, { surfaceM2, film, faster }: Settings): Enhancement {
  if (surfaceM2 === undefined || view.kLaPerH === 0) return unhelped;
  const transferMPerH = (view.kLaPerH * view.volumeL) / 1000 / surfaceM2;
  const { constants, hTotal, tempC } = view;
  // Rate and drift of one look ask the same.
  if (hTotal === faster.hTotal && transferMPerH === faster.transferMPerH) return faster;
  faster.hTotal = hTotal;
  faster.transferMPerH = transferMPerH;
  return co2Enhancement(constants, hTotal, film.at(tempC), transferMPerH, faster);
}

const unhelped: Enhancement = { times: 1, timesPerLnH: 0, timesPerLnTransfer: 0 };

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
      faster: {
        ...{ times: NaN, timesPerLnH: NaN, timesPerLnTransfer: NaN },
        ...{ hTotal: NaN, transferMPerH: NaN },
      },
    };
  },
  reaction: () => new Reaction({ airCO2: -1, DIC: 1 }),
  rate(view, settings) {
    const { times } = enhancement(view, settings);
    const gapAtm = (view.pco2AirUatm - view.pco2Uatm) * 1e-6;
    return times * view.kLaPerH * view.k0 * gapAtm * view.solutionKg;
  },
  drift(view, motion, settings) {
    const { times, timesPerLnH, timesPerLnTransfer } = enhancement(view, settings);
    const { k0, solutionKg, volumeL } = view;
    const gapAtm = (view.pco2AirUatm - view.pco2Uatm) * 1e-6;
    const gapAtmPerH = (motion.pco2AirUatm - motion.pco2Uatm) * 1e-6;
    const drivenPerH =
      k0 * gapAtmPerH * solutionKg + gapAtm * (k0 * motion.solutionKg + motion.k0 * solutionKg);
    const fasterPerH =
      timesPerLnH * motion.lnHTotal + (timesPerLnTransfer * motion.volumeL) / volumeL;
    return view.kLaPerH * (times * drivenPerH + fasterPerH * k0 * gapAtm * solutionKg);
  },
});
