import type { View } from '../../../shared/processes/view';
import { SeawaterConstants } from '../../../shared/seawater/constants';
import { emptyBlock } from '../../../shared/species/block';

/** Water at one instant, held fixed but for what a check varies. */
export function onlyView(varied: Partial<View>): View {
  const constants = new SeawaterConstants();
  constants.set(25, 35);
  return {
    timeH: 0,
    tempC: 25,
    salinityPractical: 35,
    volumeL: 300,
    solutionKg: 307,
    amounts: emptyBlock(),
    alkalinityMolPerKg: 0.0028,
    dicMolPerKg: 0.0024,
    phTotal: 8.1,
    hTotal: 10 ** -8.1,
    constants,
    pco2Uatm: 300,
    omegaAragonite: 4,
    k0: constants.k0,
    pco2AirUatm: 400,
    precipitateMol: 0,
    light: 0,
    kLaPerH: 1,
    powered: true,
    ...varied,
  };
}
