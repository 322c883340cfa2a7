import { say } from '../words/ledger';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** Nitrifiers slow down in sour water and stop (common practice): pH, total scale. */
const FULL_ABOVE_PH = 7;
const STOPPED_BELOW_PH = 6;

const NH3_G_PER_MOL = molarMassGPerMol({ N: 1, H: 3 });

interface Settings {
  readonly perH: number;
  readonly standingMolPerL: number;
}

/**
 * NH4+ + 2 O2 → NO3− + 2 H+ + H2O. The two equivalents follow from the ions. A tank's typed
 * reading is a standing level, at which animals bring as much as bacteria take: only what comes on
 * top of it is oxidised.
 */
export const nitrification = defineProcess<Settings>({
  id: 'nitrification',
  label: say.nitrification,
  role: 'life',
  cites: ['wolfGladrow2007', 'commonPractice'],
  settings({ scenario }) {
    const { nitrificationPerH } = scenario.filter;
    const standingMolPerL = scenario.tank.ammoniaMgPerL / 1000 / NH3_G_PER_MOL;
    return nitrificationPerH === 0 ? null : { perH: nitrificationPerH, standingMolPerL };
  },
  reaction: () => new Reaction({ TAN: -1, NO3: 1 }),
  rate(view, { perH, standingMolPerL }) {
    const awake = (view.phTotal - STOPPED_BELOW_PH) / (FULL_ABOVE_PH - STOPPED_BELOW_PH);
    const beyond = Math.max(0, view.amounts[indexOf.TAN]! - standingMolPerL * view.volumeL);
    return perH * beyond * Math.max(0, Math.min(1, awake));
  },
  drift(view, motion, { perH, standingMolPerL }) {
    const awake = (view.phTotal - STOPPED_BELOW_PH) / (FULL_ABOVE_PH - STOPPED_BELOW_PH);
    const beyond = view.amounts[indexOf.TAN]! - standingMolPerL * view.volumeL;
    if (beyond <= 0 || awake <= 0) return 0;
    const beyondPerH = motion.amounts[indexOf.TAN]! - standingMolPerL * motion.volumeL;
    if (awake >= 1) return perH * beyondPerH;
    const phPerH = -motion.lnHTotal * Math.LOG10E;
    return perH * (beyondPerH * awake + (beyond * phPerH) / (FULL_ABOVE_PH - STOPPED_BELOW_PH));
  },
});
