import { say } from '../words/ledger';
import { atomicMassGPerMol } from '../seawater/atomicMasses';
import type { Scenario } from '../scenario/schema';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

/** Oxygen that a whole tank breathes, by a word for its stocking, mmol/L/day (common practice). */
const BY_STOCKING = { few: 0.3, usual: 0.6, crowded: 1.2 } as const;

/** Carbon that is breathed out of algae and of food, mmol/L/day: what pH knows of. */
function seenMmolPerLPerDay({ photosynthesis, food, tank }: Scenario): number {
  const { grossMmolPerLPerDay, respiredShare } = photosynthesis;
  const foodMol = (food.gramsPerDay * food.carbonPercent) / 100 / atomicMassGPerMol.C;
  const eaten = (foodMol * food.respiredPercent) / 100;
  return grossMmolPerLPerDay * respiredShare + (eaten * 1000) / tank.volumeL;
}

/** Oxygen that the keeper says is breathed, mmol/L/day: typed, else by the word for stocking. */
const saidMmolPerLPerDay = ({ oxygen }: Scenario): number =>
  oxygen.respirationMmolPerLPerDay || BY_STOCKING[oxygen.stocking];

/** Oxygen that the whole tank breathes in the dark, mmol/L/day. */
export const breathedMmolPerLPerDay = (scenario: Scenario): number =>
  Math.max(saidMmolPerLPerDay(scenario), seenMmolPerLPerDay(scenario) * scenario.oxygen.perCarbon);

interface Settings {
  /** Carbon that all who breathe take at the tank's own temperature, and what pH knows of it. */
  readonly allMolPerH: number;
  readonly seenMolPerH: number;
  readonly perTenDegrees: number;
  readonly usualTempC: number;
}

/**
 * What a tank breathes beyond the carbon that its settings know of. The settled day gives pH as its
 * keeper measures it, and whatever carbon dioxide more is breathed, something else has fixed by
 * then: so it takes oxygen and moves neither carbon nor pH. Never less than what the carbon takes:
 * without light and food in its settings, a tank still breathes. Warmer than the tank's own
 * temperature, all that breathes does so faster (Q10); the carbon that pH knows of stays as it is.
 */
export const unseenRespiration = defineProcess<Settings>({
  id: 'unseenRespiration',
  label: say.unseenRespiration,
  role: 'life',
  cites: ['commonPractice'],
  settings({ scenario, volumeL }) {
    const { perCarbon, respirationPerTenDegrees: perTenDegrees } = scenario.oxygen;
    const molPerH = (mmolPerLPerDay: number) => (mmolPerLPerDay * volumeL) / 1000 / 24;
    const seenMmol = seenMmolPerLPerDay(scenario);
    const unseenMmol = saidMmolPerLPerDay(scenario) / perCarbon - seenMmol;
    // Whether anything warms the water must not decide it: a fault adds no row to a trace.
    if (unseenMmol <= 0 && perTenDegrees === 1) return null;
    const seenMolPerH = molPerH(seenMmol);
    return {
      allMolPerH: seenMolPerH + Math.max(0, molPerH(unseenMmol)),
      ...{ seenMolPerH, perTenDegrees, usualTempC: scenario.tank.tempC },
    };
  },
  reaction: () => new Reaction({ unseenOrganicC: -1, unseenCO2: 1 }),
  rate({ tempC }, { allMolPerH, seenMolPerH, perTenDegrees, usualTempC }) {
    const faster = perTenDegrees ** ((tempC - usualTempC) / 10);
    return Math.max(0, allMolPerH * faster - seenMolPerH);
  },
  drift({ tempC }, motion, { allMolPerH, seenMolPerH, perTenDegrees, usualTempC }) {
    if (motion.tempC === 0) return 0;
    const all = allMolPerH * perTenDegrees ** ((tempC - usualTempC) / 10);
    return all <= seenMolPerH ? 0 : (all * Math.log(perTenDegrees) * motion.tempC) / 10;
  },
});
