import type { Scenario } from '../scenario/schema';
import { seawaterDensityKgPerM3 } from '../seawater/density';
import { oxygenKLaPerH, oxygenSaturationUmolPerKg } from '../seawater/oxygen';
import { tankBox } from './tankBox';

/** What a keeper has at hand when the power is out. */
export interface HandAir {
  /** Air of the battery pump, L/min: as its box says, divided by the tanks that share it. */
  readonly airLPerMin: number;
  /** Water scooped up and poured back from a hand's height, L/min in the mean with the rests. */
  readonly scoopLPerMin: number;
}

/** A small battery pump, and a jug every twenty seconds (common practice). */
export const usualHandAir: HandAir = { airLPerMin: 2, scoopLPerMin: 3 };

/** Oxygen in a litre of air of 25 °C, mol: 0.2095 of 1/24.5. */
const OXYGEN_MOL_PER_L_OF_AIR = 0.00855;
/** Share of a bubble's oxygen that a metre of water takes, coarse bubbles (from memory: 2 to 4 %). */
const TAKEN_PER_M = 0.03;
/** Share of what is missing that a jug takes up as it falls by a hand's length (from memory). */
const TAKEN_BY_FALL = 0.25;

/** Gas exchange of CO2, 1/h, at which that of oxygen is `oxygenPerH`. */
const kLaOf = (oxygenPerH: number, tempC: number): number => oxygenPerH / oxygenKLaPerH(1, tempC);

/**
 * Gas exchange (kLa, 1/h) that a battery air pump brings to a tank: what its bubbles give on their
 * way up. An estimate: nothing for the surface that it stirs, and half or double are possible.
 */
export function batteryKLaPerH(scenario: Scenario, { airLPerMin }: HandAir): number {
  const { tempC, salinityPractical, volumeL } = scenario.tank;
  const givenMolPerH =
    airLPerMin * 60 * OXYGEN_MOL_PER_L_OF_AIR * TAKEN_PER_M * tankBox(scenario).depthM;
  const kgPerL = seawaterDensityKgPerM3({ tempC, salinityPractical }) / 1000;
  const holdsMol = oxygenSaturationUmolPerKg(tempC, salinityPractical) * 1e-6 * kgPerL * volumeL;
  return kLaOf(givenMolPerH / holdsMol, tempC);
}

/** Gas exchange (kLa, 1/h) that scooping up and pouring back brings (estimate, as above). */
export const scoopKLaPerH = ({ tank }: Scenario, { scoopLPerMin }: HandAir): number =>
  kLaOf((scoopLPerMin * 60 * TAKEN_BY_FALL) / tank.volumeL, tank.tempC);
