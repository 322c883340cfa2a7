import { newestOf } from '../../../shared/log/newest';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { mgPerGram } from '../../../shared/recipe/gramsFor';
import type { Scenario } from '../../../shared/scenario/schema';
import { dissolve, type AdditiveId } from '../../../shared/species/additives';
import { saltKg } from '../../../shared/species/block';
import { seawaterDensityKgPerM3 } from '../../../shared/seawater/density';
import { SALT_G_PER_KG_PER_PSU } from '../../../shared/water/referenceSeawater';
import { stateAfter } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import { replayed } from '../turn/replay';
import { METAL_OF } from './metals';
import { newWaterHolds } from './newWater';
import { seasonQuantities, type SeasonId, type SeasonQuantity } from './quantity';

/** What was poured in or changed after a quantity was last read, as far as it is still there. */
export interface PouredSince {
  readonly id: SeasonId;
  /** Of the reading that it is added to. */
  readonly at: string;
  /** mg/L, or ppt; below 0 where new water holds less. */
  readonly by: number;
}

/** Longer than this nobody goes without a test and believes the sum. */
const MOST_DAYS = 180;
/** Poured so little since that no kit tells it. */
const TOLD = { calcium: 1, magnesium: 1, salinity: 0.02 } as const;

/** What so many grams add to a tank, in the quantity's unit. */
function adds(id: SeasonId, additive: AdditiveId, grams: number, { tank }: Scenario): number {
  const { volumeL } = tank;
  if (id !== 'salinity') return (grams * mgPerGram(additive, METAL_OF[id])) / volumeL;
  const waterKg = (volumeL * seawaterDensityKgPerM3(tank)) / 1000;
  return (1000 * saltKg(dissolve(additive, grams))) / waterKg / SALT_G_PER_KG_PER_PSU;
}

/** How far a quantity falls by itself in so many days as the tank runs, poured in nothing. */
function fallen(
  { column }: SeasonQuantity,
  now: Scenario,
  days: number,
  options: SimulationOptions,
): number {
  const runs = { ...now, additions: [], faults: [], responses: [] };
  const from = stateAfter({ ...runs, days: 0 }, options);
  const course = replayed([{ scenario: runs, untilDay: days }], from, options).hourly(column);
  return Math.max(0, course[0]! - course.at(-1)!);
}

/**
 * Of each of the three what the log says was poured in since it was last read, less what the tank has
 * taken of it since: never more than was poured, and never less than nothing. Water that was changed
 * takes its share of all that, and brings its own.
 */
function pouredSince(
  now: Scenario,
  readings: readonly Reading[],
  options: SimulationOptions,
): PouredSince[] {
  const lastH = Math.max(...readings.map(({ at }) => hoursOf(at)));
  return seasonQuantities.flatMap((quantity): PouredSince[] => {
    const { id, reading } = quantity;
    const newest = newestOf(readings, reading);
    if (!newest) return [];
    const held = newWaterHolds(now)[id];
    // Within one minute the test comes first.
    const since = readings.filter(({ at }) => at >= newest.at);
    let [poured, changed] = [0, 0];
    for (const { additive, grams, waterChangePercent } of since) {
      if (additive && grams) poured += adds(id, additive, grams, now);
      const share = (waterChangePercent ?? 0) / 100;
      changed += share * (held - newest.value - changed);
      poured *= 1 - share;
    }
    const days = Math.min(MOST_DAYS, Math.ceil((lastH - hoursOf(newest.at)) / 24));
    const taken = days > 0 && poured >= TOLD[id] ? fallen(quantity, now, days, options) : 0;
    const by = Math.max(0, poured - taken) + changed;
    return Math.abs(by) < TOLD[id] ? [] : [{ id, at: newest.at, by }];
  });
}

/** The tank with it: as the newest readings have it, and what came in after them. */
export function withPoured(
  read: Scenario,
  readings: readonly Reading[],
  options: SimulationOptions,
): { readonly now: Scenario; readonly poured: readonly PouredSince[] } {
  const poured = pouredSince(read, readings, options);
  if (poured.length === 0) return { now: read, poured };
  const by = (id: SeasonId) => poured.find((one) => one.id === id)?.by ?? 0;
  const tank = {
    ...read.tank,
    calciumMgPerL: read.tank.calciumMgPerL + by('calcium'),
    magnesiumMgPerL: read.tank.magnesiumMgPerL + by('magnesium'),
    salinityPractical: read.tank.salinityPractical + by('salinity'),
  };
  return { now: { ...read, tank }, poured };
}
