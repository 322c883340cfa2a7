import { meqPerLPerDkh } from '../seawater/alkalinity';
import { Reaction } from '../species/reaction';
import { defineProcess, type Start } from './process';
import type { View } from './view';

/** The laws were measured between Ω 2 and 4; flat above 6 and none below 1 are common practice. */
const FLAT_ABOVE_OMEGA = 6;
/** Growth stops over this width above Ω 1, so that the rate has no step for the integrator. */
const STOP_WIDTH = 0.2;

export const omegaRange = { omegaAragonite: [2, 4], source: 'langdonAtkinson2005' } as const;

interface Settings {
  readonly start: Start;
  readonly molPerHDayMean: number;
  readonly perDay: number;
  readonly lightFactor: number;
  readonly darkFactor: number;
  readonly proportional: boolean;
}

export const usedOmega = (omega: number): number => Math.min(omega, FLAT_ABOVE_OMEGA);

function saturationFactor(omega: number, reference: number, proportional: boolean): number {
  const now = usedOmega(omega);
  const stop = Math.max(0, Math.min(1, (now - 1) / STOP_WIDTH));
  const law = proportional
    ? (now - 1) / Math.max(STOP_WIDTH, reference - 1)
    : Math.max(0, 1 + 0.15 * (now - reference));
  return stop * law;
}

export function dayWeights(lightDarkRatio: number, lightHours: number) {
  const dark = 1 / (1 + (lightHours / 24) * (lightDarkRatio - 1));
  return { light: lightDarkRatio * dark, dark };
}

/** Stony corals lay down aragonite: two equivalents of alkalinity and one calcium for each CaCO3. */
export const calcification = defineProcess<Settings>({
  id: 'calcification',
  label: 'coral growth',
  cites: ['langdonAtkinson2005', 'chanConnolly2013', 'gattuso1999'],
  settings(start) {
    const { corals, lights } = start.scenario;
    const molPerDay =
      corals.measuredAs === 'use'
        ? (corals.useDkhPerDay * meqPerLPerDkh * start.volumeL) / 2000
        : (corals.rateMmolPerM2PerDay * corals.areaM2) / 1000;
    if (molPerDay === 0) return null;
    const weights = dayWeights(corals.lightDarkRatio, lights.hours);
    return {
      start,
      molPerHDayMean: molPerDay / 24,
      perDay: corals.growthPercentPerDay / 100,
      lightFactor: weights.light,
      darkFactor: weights.dark,
      proportional: corals.omegaLaw === 'proportional',
    };
  },
  reaction: () => new Reaction({ Ca: -1, DIC: -1, skeletonCaCO3: 1 }),
  rate(view: View, s) {
    const grown = Math.exp((s.perDay * Math.max(0, view.timeH)) / 24);
    const lit = s.darkFactor + (s.lightFactor - s.darkFactor) * view.light;
    const factor = saturationFactor(view.omegaAragonite, s.start.omegaReference, s.proportional);
    return s.molPerHDayMean * grown * lit * factor;
  },
});
