import { say } from '../words/ledger';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { densityKgPerM3 } from '../seawater/density';
import { indexOf } from '../species/block';
import { Reaction } from '../species/reaction';
import { referenceMolPerKg } from '../water/referenceSeawater';
import { calcification } from './calcification';
import { defineProcess, type Start } from './process';

interface Settings {
  /** Share of the carbonate that this ion takes instead of calcium, on the first day. */
  readonly share: number;
  readonly startMolPerKg: number;
}

type Ion = 'Mg' | 'Sr';

/** What the water holds of it at the start; a tank's strontium is that of seawater. */
function startMolPerKg(ion: Ion, { scenario: { tank } }: Start): number {
  if (ion === 'Sr') return (referenceMolPerKg.Sr * tank.salinityPractical) / 35;
  const molPerL = tank.magnesiumMgPerL / 1000 / molarMassGPerMol({ Mg: 1 });
  return (molPerL * 1000) / densityKgPerM3(tank.tempC, tank.salinityPractical);
}

/**
 * An ion takes the place of calcium in the carbonate that corals lay down, in proportion to what
 * the water holds of it. Written as an exchange: the alkalinity is all in coral growth, and corals
 * go on growing when the water has no strontium left.
 */
function inPlaceOfCalcium(ion: Ion, label: string, reaction: Reaction) {
  const place = indexOf[ion];
  return defineProcess<Settings>({
    id: `skeleton${ion}`,
    label,
    role: 'growth',
    cites: ['commonPractice'],
    settings(start) {
      const { skeletonMgPerCa, skeletonSrPerCa } = start.scenario.corals;
      const perCa = (ion === 'Mg' ? skeletonMgPerCa : skeletonSrPerCa) / 1000;
      if (calcification.settings(start) === null || perCa === 0) return null;
      const carbonatesPerCa = 1 + (skeletonMgPerCa + skeletonSrPerCa) / 1000;
      return { share: perCa / carbonatesPerCa, startMolPerKg: startMolPerKg(ion, start) };
    },
    reaction: () => reaction,
    follows: calcification.id,
    rate: (view, { share, startMolPerKg }, leadMolPerH = 0) =>
      (share * view.amounts[place]! * leadMolPerH) / (view.solutionKg * startMolPerKg),
    drift(view, motion, { share, startMolPerKg }, lead) {
      const { solutionKg } = view;
      const perKg = view.amounts[place]! / solutionKg;
      const perKgPerH = (motion.amounts[place]! - perKg * motion.solutionKg) / solutionKg;
      return (share * (perKgPerH * lead.molPerH + perKg * lead.driftMolPerH2)) / startMolPerKg;
    },
  });
}

export const skeletonMagnesium = inPlaceOfCalcium(
  'Mg',
  say.skeletonMg,
  new Reaction({ Mg: -1, Ca: 1, skeletonCaCO3: -1, skeletonMgCO3: 1 }),
);

export const skeletonStrontium = inPlaceOfCalcium(
  'Sr',
  say.skeletonSr,
  new Reaction({ Sr: -1, Ca: 1, skeletonCaCO3: -1, skeletonSrCO3: 1 }),
);
