import { twoPart } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { scenarioOf } from '../../../shared/scenario/write';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { limewaterDkhFromGPerL } from '../../../shared/seawater/limewater';
import { alkalinityMeqPerG } from '../../../shared/species/additives';
import type { Draw } from './draw';

export const carriers = ['limewater', 'pairs', 'bicarbonate', 'waterChanges'] as const;
export type Carrier = (typeof carriers)[number];

/** A tank before anybody has tested it, and how it is dosed. */
export interface Tank {
  readonly carrier: Carrier;
  readonly volumeL: number;
  readonly startDkh: number;
  readonly useDkhPerDay: number;
  readonly growthPercentPerDay: number;
  readonly evaporationLPerDay: number;
  /** What the dosing brings, dKH a day of this volume. */
  readonly dosedDkhPerDay: number;
  readonly days: number;
  readonly readings: number;
  readonly sigmaDkh: number;
}

/** Alkalinity stays this near to its start, or the keeper would have done something. */
const MOST_DRIFT_DKH = 2;
/** Limewater mixed a little below saturation, g/L. */
const LIME_G_PER_L = 1.4;

/** The whole range that is asked: 40–2,000 L, 0.2–4 dKH a day, 10–60 readings over 10–60 days. */
export function drawTank(draw: Draw, carrier: Carrier, few: boolean): Tank {
  const { between, evenly } = draw;
  const days = few ? between(5, 20) : between(10, 60);
  const readings = few ? 5 : Math.max(10, Math.round(days * between(0.4, 1)));
  const volumeL = Math.round(evenly(40, 2000));
  const evaporation = between(0.7, 2.5) / 100;
  const mostLime = limewaterDkhFromGPerL(LIME_G_PER_L) * evaporation;
  const mostUndosed = (1.5 * MOST_DRIFT_DKH) / days;
  const highest = {
    limewater: Math.min(4, mostLime),
    pairs: 4,
    bicarbonate: 2,
    waterChanges: mostUndosed,
  };
  const useDkhPerDay = evenly(Math.min(0.2, highest[carrier] / 2), highest[carrier]);
  const drift = (MOST_DRIFT_DKH * between(-1, 0.5)) / days;
  const dosed = {
    limewater: Math.min(mostLime, useDkhPerDay + drift),
    pairs: useDkhPerDay + drift,
    bicarbonate: useDkhPerDay + drift,
    waterChanges: 0,
  };
  const mostGrowth = Math.min(0.6, (200 * MOST_DRIFT_DKH) / (useDkhPerDay * days ** 2));
  return {
    ...{ carrier, volumeL, days, readings, useDkhPerDay },
    startDkh: between(7.5, 10),
    growthPercentPerDay: between(0, 1) < 0.5 ? 0 : mostGrowth * between(0.2, 1),
    evaporationLPerDay: Number((volumeL * evaporation).toPrecision(2)),
    dosedDkhPerDay: Math.max(0, dosed[carrier]),
    sigmaDkh: between(0.1, 0.2),
  };
}

/** What its keeper has typed: volume, first reading and dosing. All else is the untouched default. */
export function typedPlan(tank: Tank, firstDkh: number): Scenario {
  const { volumeL, carrier, evaporationLPerDay, dosedDkhPerDay } = tank;
  const plain = scenarioOf({
    type: 'paper-reef/scenario',
    version: 4,
    title: 'a twin in the drawing office of Ombrel Pier',
    days: 30,
    tank: { volumeL, alkalinityDkh: firstDkh },
    ...(carrier === 'limewater' && {
      evaporation: { litresPerDay: evaporationLPerDay },
      topOff: {
        reservoirL: Math.ceil(evaporationLPerDay * 4),
        additive: 'calciumHydroxide',
        gramsPerL: limeGPerL(tank),
      },
    }),
  });
  if (carrier !== 'pairs') return plain;
  const sodaG = (dosedDkhPerDay * meqPerLPerDkh * volumeL) / alkalinityMeqPerG('sodiumCarbonate');
  return {
    ...plain,
    dosers: twoPart('sodiumCarbonate', Number((sodaG * 10).toPrecision(3)), plain),
  };
}

const limeGPerL = ({ dosedDkhPerDay, volumeL, evaporationLPerDay }: Tank): number => {
  const dkhPerG = limewaterDkhFromGPerL(1);
  return Number(((dosedDkhPerDay * volumeL) / evaporationLPerDay / dkhPerG).toFixed(2));
};
