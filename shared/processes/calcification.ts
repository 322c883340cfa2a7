import { say } from '../words/ledger';
import { Reaction } from '../species/reaction';
import { dayWeights, saturationFactor, saturationSlope, typedUseEqPerDay } from './growthLaw';
import { defineProcess, type Start } from './process';
import { temperatureFactor, temperatureSlope } from './temperatureBell';
import type { View } from './view';

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

/**
 * Living surface against the start's: branching corals grow in step with what is there, massive
 * ones by a skin of constant thickness, so that the root of the surface grows evenly. Both begin
 * at the same relative rate.
 */
export const grownBy = (relative: number, massive: boolean): number =>
  massive ? (1 + relative / 2) ** 2 : Math.exp(relative);

/** How that changes in a unit of relative growth. */
const grownSlope = (relative: number, massive: boolean): number =>
  massive ? 1 + relative / 2 : Math.exp(relative);

const relativeGrowth = ({ timeH }: View, { perDay }: CalcificationSettings): number =>
  (perDay * Math.max(0, timeH)) / 24;

const litFactor = (light: number, { darkFactor, lightFactor }: CalcificationSettings): number =>
  darkFactor + (lightFactor - darkFactor) * light;

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
    const grown = grownBy(relativeGrowth(view, s), s.massive);
    const warmth = s.startTempC === undefined ? 1 : temperatureFactor(view.tempC, s.startTempC);
    const factor = saturationFactor(view.omegaAragonite, s.start, s.proportional);
    return s.molPerHDayMean * grown * warmth * litFactor(view.light, s) * factor;
  },
  drift(view, motion, s) {
    const relative = relativeGrowth(view, s);
    const grown = grownBy(relative, s.massive);
    const warmth = s.startTempC === undefined ? 1 : temperatureFactor(view.tempC, s.startTempC);
    const lit = litFactor(view.light, s);
    const factor = saturationFactor(view.omegaAragonite, s.start, s.proportional);
    const factorPerH =
      saturationSlope(view.omegaAragonite, s.start, s.proportional) * motion.omegaAragonite;
    const grownPerH = (grownSlope(relative, s.massive) * s.perDay) / 24;
    const litPerH = (s.lightFactor - s.darkFactor) * motion.light;
    const warmthPerH =
      s.startTempC === undefined || motion.tempC === 0
        ? 0
        : temperatureSlope(view.tempC, s.startTempC) * motion.tempC;
    return (
      s.molPerHDayMean *
      (grown * warmth * (litPerH * factor + lit * factorPerH) +
        lit * factor * (grownPerH * warmth + grown * warmthPerH))
    );
  },
});
