import { meqPerLPerDkh } from '../seawater/alkalinity';
import type { GrowthReference, Start } from './process';

/** The laws were measured between Ω 2 and 4; flat above 6 and none below 1 are common practice. */
export const FLAT_ABOVE_OMEGA = 6;
/** Growth stops over this width above its end, so that the rate has no step for the integrator. */
const STOP_WIDTH = 0.2;
export const USUAL_STOP_OMEGA = 1;

export const omegaRange = { omegaAragonite: [2, 4], source: 'langdonAtkinson2005' } as const;

export const usedOmega = (omega: number): number => Math.min(omega, FLAT_ABOVE_OMEGA);

/** How much faster corals grow at a saturation than at the one that their law refers to. */
export function saturationFactor(
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

/** How that changes with each unit of saturation; at a bend of the law, as it does below. */
export function saturationSlope(
  omega: number,
  reference: GrowthReference,
  proportional: boolean,
): number {
  const { omegaReference, stopOmega } = reference;
  if (omega <= stopOmega || omega > FLAT_ABOVE_OMEGA) return 0;
  const perOmega = proportional ? 1 / Math.max(STOP_WIDTH, omegaReference - stopOmega) : 0.15;
  const law = proportional
    ? (omega - stopOmega) * perOmega
    : Math.max(0, 1 + perOmega * (omega - omegaReference));
  const stop = Math.min(1, (omega - stopOmega) / STOP_WIDTH);
  return (law > 0 ? stop * perOmega : 0) + (stop < 1 ? law / STOP_WIDTH : 0);
}

/**
 * Corals whose use was measured grow at the saturation they have: where that dips below the usual
 * end of growth, the end is lower for them, so that the day takes what was typed. Those of which the
 * area is typed promise no use: without carbonate they do not grow, and ask for no carbon that is gone.
 */
export const stopOmegaFor = (lowestOmega: number, measuredAs: 'use' | 'area'): number => {
  const end = lowestOmega - STOP_WIDTH;
  return Math.min(USUAL_STOP_OMEGA, measuredAs === 'use' ? end : Math.max(0, end));
};

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
