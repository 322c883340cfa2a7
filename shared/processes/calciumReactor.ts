import { say } from '../words/ledger';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { setNoncarbonate } from '../seawater/noncarbonate';
import { phTotalFromPhNbs } from '../seawater/phNbs';
import { totalFluorideMolPerKg } from '../seawater/totals';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess, type Start } from './process';
import { QUOTIENT_H } from './quotient';
import { WARMER_C, type Motion } from './motion';
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
const gainEqPerKg = (view: View, { effluentEqPerL }: Settings, alkalinityMolPerKg: number) =>
  Math.max(0, (effluentEqPerL * view.volumeL) / view.solutionKg - alkalinityMolPerKg);

const gainNow = (view: View, s: Settings) => gainEqPerKg(view, s, view.alkalinityMolPerKg);

const gainDrift = (view: View, motion: Motion, s: Settings): number =>
  gainNow(view, s) === 0 ? 0 : -motion.alkalinityMolPerKg;

/** DIC of effluent at its pH, with everything but carbonate as in a water of these totals, mol/kg. */
function effluentDicMolPerKg(view: View, s: Settings, water: Totals, k = view.constants): number {
  const h = Math.exp(-phTotalFromPhNbs(s.effluentPhNbs, k) * Math.LN10);
  const effluent = {
    k,
    borate: water.borate,
    sulfate: water.sulfate,
    fluoride: totalFluorideMolPerKg(view.salinityPractical),
    phosphate: water.phosphate,
    ammonia: water.ammonia,
    noncarbonateMolPerKg: 0.5,
    noncarbonateSlope: 0.5,
  };
  setNoncarbonate(effluent, h);
  const { alkalinity } = water;
  const carbonate = Math.max(
    0,
    alkalinity + gainEqPerKg(view, s, alkalinity) - effluent.noncarbonateMolPerKg,
  );
  return (carbonate * (h * h + k.k1 * (h + k.k2))) / (k.k1 * (h + 2 * k.k2));
}

interface Totals {
  readonly alkalinity: number;
  readonly borate: number;
  readonly sulfate: number;
  readonly phosphate: number;
  readonly ammonia: number;
}

const totals = (alkalinity: number, kg: number, molOf: (species: number) => number): Totals => ({
  alkalinity,
  borate: molOf(indexOf.B) / kg,
  sulfate: molOf(indexOf.SO4) / kg,
  phosphate: molOf(indexOf.PO4) / kg,
  ammonia: molOf(indexOf.TAN) / kg,
});

const totalsOf = ({ amounts, solutionKg, alkalinityMolPerKg }: View): Totals =>
  totals(alkalinityMolPerKg, solutionKg, (species) => amounts[species]!);

/** The totals so many hours on, as the tank moves. */
const totalsAfter = (view: View, motion: Motion, hours: number): Totals =>
  totals(
    view.alkalinityMolPerKg + hours * motion.alkalinityMolPerKg,
    view.solutionKg + hours * motion.solutionKg,
    (species) => view.amounts[species]! + hours * motion.amounts[species]!,
  );

/** Effluent moves with the tank, but for a litre's weight; at the pH that was set, colder water holds more. */
function effluentDicDrift(view: View, motion: Motion, s: Settings): number {
  const after = (hours: number) => effluentDicMolPerKg(view, s, totalsAfter(view, motion, hours));
  const withTank = (after(QUOTIENT_H) - after(-QUOTIENT_H)) / (2 * QUOTIENT_H);
  if (motion.tempC === 0) return withTank;
  const warmer = effluentDicMolPerKg(view, s, totalsOf(view), motion.warmer);
  return withTank + (motion.tempC * (warmer - after(0))) / WARMER_C;
}

/** Coral gravel dissolves in water made acid with carbon dioxide. */
export const reactorMedia = defineProcess<Settings>({
  id: 'reactorMedia',
  label: say.reactorMedia,
  role: 'reactor',
  cites: ['wolfGladrow2007'],
  settings,
  reaction: () => new Reaction({ reactorMedia: -1, Ca: 1, DIC: 1 }),
  rate: (view, s) => (kgPerH(view, s) * gainNow(view, s)) / 2,
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
    const gainMolPerKg = effluentDicMolPerKg(view, s, totalsOf(view)) - view.dicMolPerKg;
    return kgPerH(view, s) * (gainMolPerKg - gainNow(view, s) / 2);
  },
  drift(view, motion, s) {
    const gainMolPerKgPerH = effluentDicDrift(view, motion, s) - motion.dicMolPerKg;
    return kgPerH(view, s) * (gainMolPerKgPerH - gainDrift(view, motion, s) / 2);
  },
});
