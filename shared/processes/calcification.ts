import { say } from '../words/ledger';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { Reaction } from '../species/reaction';
import { defineProcess, type GrowthReference, type Start } from './process';
import { temperatureFactor } from './temperatureBell';
import type { View } from './view';

/** The laws were measured between Ω 2 and 4; flat above 6 and none below 1 are common practice. */
export const FLAT_ABOVE_OMEGA = 6;
/** Growth stops over this width above its end, so that the rate has no step for the integrator. */
const STOP_WIDTH = 0.2;
export const USUAL_STOP_OMEGA = 1;

export const omegaRange = { omegaAragonite: [2, 4], source: 'langdonAtkinson2005' } as const;

export interface CalcificationSettings {
  readonly start: Start;
  readonly molPerHDayMean: number;
  readonly perDay: number;
  readonly lightFactor: number;
  readonly darkFactor: number;
  readonly proportional: boolean;
  readonly massive: boolean;
  /** Undefined when growth does not answer to temperature. */
  readonly startTempC: number | undefined;
}

export const usedOmega = (omega: number): number => Math.min(omega, FLAT_ABOVE_OMEGA);

/** How much faster corals grow at a saturation than at the one that their law refers to. */
function saturationFactor(
  omega: number,
  { omegaReference, stopOmega }: GrowthReference,
  proportional: boolean,
): number {
  const now = usedOmega(omega);
  const stop = Math.max(0, Math.min(1, (now - stopOmega) / STOP_WIDTH));
  const law = proportional
    ? (now - stopOmega) / Math.max(STOP_WIDTH, omegaReference - stopOmega)
    : Math.max(0, 1 + 0.15 * (now - omegaReference));
  return stop * law;
}

/**
 * Corals whose use was measured grow at the saturation they have: where that dips below the usual
 * end of growth, the end is lower for them, so that the day takes what was typed.
 */
export const stopOmegaFor = (lowestOmega: number): number =>
  Math.min(USUAL_STOP_OMEGA, lowestOmega - STOP_WIDTH);

/**
 * Living surface against the start's: branching corals grow in step with what is there, massive
 * ones by a skin of constant thickness, so that the root of the surface grows evenly. Both begin
 * at the same relative rate.
 */
const grownBy = (relative: number, massive: boolean): number =>
  massive ? (1 + relative / 2) ** 2 : Math.exp(relative);

export function dayWeights(lightDarkRatio: number, lightHours: number) {
  const dark = 1 / (1 + (lightHours / 24) * (lightDarkRatio - 1));
  return { light: lightDarkRatio * dark, dark };
}

/** What a keeper measures as use: all that life takes from the water in a day. */
export const typedUseEqPerDay = ({
  scenario,
  volumeL,
}: Pick<Start, 'scenario' | 'volumeL'>): number =>
  (scenario.corals.useDkhPerDay * meqPerLPerDkh * volumeL) / 1000;

/** Stony corals lay down aragonite: two equivalents of alkalinity and one calcium for each CaCO3. */
export const calcification = defineProcess<CalcificationSettings>({
  id: 'calcification',
  label: say.calcification,
  role: 'growth',
  cites: ['langdonAtkinson2005', 'chanConnolly2013', 'gattuso1999', 'commonPractice'],
  settings(start) {
    const { corals, lights, tank } = start.scenario;
    const molPerDay =
      corals.measuredAs === 'use'
        ? Math.max(0, typedUseEqPerDay(start) - start.otherUseEqPerDay) / 2
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
      massive: corals.growthShape === 'massive',
      startTempC: corals.temperatureLaw === 'bell' ? tank.tempC : undefined,
    };
  },
  reaction: () => new Reaction({ Ca: -1, DIC: -1, skeletonCaCO3: 1 }),
  rate(view: View, s) {
    const grown = grownBy((s.perDay * Math.max(0, view.timeH)) / 24, s.massive);
    const warmth = s.startTempC === undefined ? 1 : temperatureFactor(view.tempC, s.startTempC);
    const lit = s.darkFactor + (s.lightFactor - s.darkFactor) * view.light;
    const factor = saturationFactor(view.omegaAragonite, s.start, s.proportional);
    return s.molPerHDayMean * grown * warmth * lit * factor;
  },
});
