import { say } from '../words/ledger';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { precipitationUmolPerM2PerH, type PrecipitationLaw } from '../seawater/precipitation';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';
import { QUOTIENT_H } from './quotient';

/** Typed use is total loss, this one included: without being asked for, it stays off below. */
const GUARDED_ABOVE_OMEGA = 10;
/** It sets in over this much Ω, so that the rate has no step for the integrator. */
const ONSET_WIDTH = 0.3;
/** So little of Ω or of its surface moves while a drift is worked out. */
const SMALL_SHARE = 1e-3;
const G_PER_MOL = molarMassGPerMol({ Ca: 1, C: 1, O: 3 });

interface Settings {
  readonly law: PrecipitationLaw;
  readonly aboveOmega: number;
  /** Solid surface at the start, and what one mole of chalk adds to it. */
  readonly startM2: number;
  readonly m2PerMol: number;
}

function chalkMolPerH(omega: number, chalkMol: number, tempC: number, settings: Settings): number {
  const { law, aboveOmega, startM2, m2PerMol } = settings;
  if (omega <= aboveOmega) return 0;
  const umolPerM2 = precipitationUmolPerM2PerH(omega, tempC, law);
  return 1e-6 * umolPerM2 * (startM2 + m2PerMol * chalkMol) * onset(omega, aboveOmega);
}

function onset(omega: number, above: number): number {
  const x = Math.max(0, Math.min(1, (omega - above) / ONSET_WIDTH));
  return x * x * (3 - 2 * x);
}

/**
 * Aragonite that falls out by itself on solid surfaces and on its own crystals, whose surface
 * grows with it: the runaway (moras2022). Threshold and surfaces are the keeper's to set.
 */
export const precipitation = defineProcess<Settings>({
  id: 'precipitation',
  label: say.precipitation,
  role: 'chalk',
  cites: ['burtonWalter1987', 'zhongMucci1989', 'moras2022', 'commonPractice'],
  settings({ scenario, volumeL }) {
    const { mode, law, aboveOmega, wettedM2Per100L, crystalM2PerG, seedG } = scenario.precipitation;
    const startM2 = (wettedM2Per100L * volumeL) / 100 + crystalM2PerG * seedG;
    if (mode === 'off' || startM2 === 0) return null;
    return {
      law,
      aboveOmega: mode === 'guarded' ? GUARDED_ABOVE_OMEGA : aboveOmega,
      startM2,
      m2PerMol: crystalM2PerG * G_PER_MOL,
    };
  },
  reaction: () => new Reaction({ Ca: -1, DIC: -1, precipitateCaCO3: 1 }),
  rate: (view, settings) =>
    chalkMolPerH(view.omegaAragonite, view.precipitateMol, view.tempC, settings),
  drift({ omegaAragonite, precipitateMol, tempC }, motion, settings) {
    if (omegaAragonite <= settings.aboveOmega) return 0;
    const after = (hours: number) =>
      chalkMolPerH(
        omegaAragonite + hours * motion.omegaAragonite,
        precipitateMol + hours * motion.precipitateMol,
        tempC + hours * motion.tempC,
        settings,
      );
    // Where it all falls out in a blink, the quotient is taken within it.
    const { startM2, m2PerMol } = settings;
    const perH = Math.max(
      Math.abs(motion.omegaAragonite) / omegaAragonite,
      Math.abs(m2PerMol * motion.precipitateMol) / (startM2 + m2PerMol * precipitateMol),
    );
    const hours = Math.min(QUOTIENT_H, SMALL_SHARE / perH);
    return (after(hours) - after(-hours)) / (2 * hours);
  },
});
