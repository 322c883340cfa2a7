import { say } from '../words/ledger';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { setNoncarbonate } from '../seawater/noncarbonate';
import { phTotalFromPhNbs } from '../seawater/phNbs';
import { totalFluorideMolPerKg } from '../seawater/totals';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess, type Start } from './process';
import type { Motion } from './motion';
import type { View } from './view';

/** Tank water goes in, and comes back as effluent; what it gains on the way is what is booked. */
interface Settings {
  readonly dripLPerH: number;
  readonly effluentEqPerL: number;
  readonly effluentPhNbs: number;
}

function settings({ scenario }: Start): Settings | null {
  const { dripLPerH, effluentDkh, effluentPhNbs } = scenario.calciumReactor;
  if (dripLPerH === 0) return null;
  return { dripLPerH, effluentEqPerL: (effluentDkh * meqPerLPerDkh) / 1000, effluentPhNbs };
}

const kgPerH = (view: View, { dripLPerH }: Settings) =>
  view.powered ? (dripLPerH * view.solutionKg) / view.volumeL : 0;

/** Gravel only dissolves: effluent is never below the water it was made of. */
const gainEqPerKg = (view: View, { effluentEqPerL }: Settings) =>
  Math.max(0, (effluentEqPerL * view.volumeL) / view.solutionKg - view.alkalinityMolPerKg);

const gainDrift = (view: View, motion: Motion, s: Settings): number =>
  gainEqPerKg(view, s) === 0 ? 0 : -motion.alkalinityMolPerKg;

/** DIC of effluent at its pH, with everything but carbonate as in the tank. */
function effluentDicMolPerKg(view: View, s: Settings): number {
  const { constants: k, amounts, solutionKg } = view;
  const h = 10 ** -phTotalFromPhNbs(s.effluentPhNbs, k);
  const water = {
    k,
    borate: amounts[indexOf.B]! / solutionKg,
    sulfate: amounts[indexOf.SO4]! / solutionKg,
    fluoride: totalFluorideMolPerKg(view.salinityPractical),
    phosphate: amounts[indexOf.PO4]! / solutionKg,
    ammonia: amounts[indexOf.TAN]! / solutionKg,
    noncarbonateMolPerKg: 0,
    noncarbonateSlope: 0,
  };
  setNoncarbonate(water, h);
  const alkalinity = view.alkalinityMolPerKg + gainEqPerKg(view, s);
  const carbonate = Math.max(0, alkalinity - water.noncarbonateMolPerKg);
  return (carbonate * (h * h + k.k1 * (h + k.k2))) / (k.k1 * (h + 2 * k.k2));
}

/** Effluent stays as it was set, but for a litre's weight; where nothing is gained it moves with the tank. */
const effluentDicDrift = (view: View, motion: Motion, s: Settings): number =>
  gainEqPerKg(view, s) > 0
    ? 0
    : (motion.alkalinityMolPerKg * effluentDicMolPerKg(view, s)) / view.alkalinityMolPerKg;

/** Coral gravel dissolves in water made acid with carbon dioxide. */
export const reactorMedia = defineProcess<Settings>({
  id: 'reactorMedia',
  label: say.reactorMedia,
  role: 'reactor',
  cites: ['wolfGladrow2007'],
  settings,
  reaction: () => new Reaction({ reactorMedia: -1, Ca: 1, DIC: 1 }),
  rate: (view, s) => (kgPerH(view, s) * gainEqPerKg(view, s)) / 2,
  drift: (view, motion, s) => (kgPerH(view, s) * gainDrift(view, motion, s)) / 2,
});

/** The carbon dioxide that the effluent carries beyond that of the tank and of the gravel. */
export const reactorCo2 = defineProcess<Settings>({
  id: 'reactorCo2',
  label: say.reactorCo2,
  role: 'reactor',
  cites: ['lueker2000'],
  settings,
  reaction: () => new Reaction({ reactorCO2: -1, DIC: 1 }),
  rate(view, s) {
    const gainMolPerKg = effluentDicMolPerKg(view, s) - view.dicMolPerKg;
    return kgPerH(view, s) * (gainMolPerKg - gainEqPerKg(view, s) / 2);
  },
  drift(view, motion, s) {
    const gainMolPerKgPerH = effluentDicDrift(view, motion, s) - motion.dicMolPerKg;
    return kgPerH(view, s) * (gainMolPerKgPerH - gainDrift(view, motion, s) / 2);
  },
});
