import type { SupplyId } from '../../../shared/log/supply';
import type { Pace } from '../../../shared/recipe/orderBy';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';
import { saltGPerDay } from '../../../shared/verdict/supplies';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { margins, MARGIN_SIGMAS, needsOf } from '../away/needs';
import { volume } from '../fit/doubts';

/** What a plan uses up, and how well that is known. */
export interface PaceQuestion {
  readonly now: Scenario;
  /** Two standard errors of the use, dKH a day. */
  readonly giveOrTakeDkhPerDay: number;
}

/** Grams a day of one powder, or of salt. */
export interface SupplyPace extends Pace {
  readonly id: SupplyId;
}

/** Two weeks have every day of the week twice. */
export const PACE_DAYS = 14;

type Recipe = readonly { readonly additive: AdditiveId; readonly gramsPerL: number }[];

/** What goes out of a vessel, by the engine as set and at most, turned to follow the use to the ends of its doubt. */
export function pacesOf(
  { now, giveOrTakeDkhPerDay }: PaceQuestion,
  options: SimulationOptions = usualOptions,
): SupplyPace[] {
  const { topOff, dosers, corals } = now;
  const { useDkhPerDay } = corals;
  const useShare = useDkhPerDay > 0 ? Math.min(1, giveOrTakeDkhPerDay / useDkhPerDay) : 0;
  const paces = new Map<AdditiveId, Pace>();
  for (const { pump, usedL, dailyMostL } of needsOf(now, PACE_DAYS, options)) {
    const recipe: Recipe =
      pump !== undefined
        ? dosers[pump]!.recipe
        : topOff.reservoirL > 0 && topOff.additive !== 'none'
          ? [{ additive: topOff.additive, gramsPerL: topOff.gramsPerL }]
          : [];
    const margin = pump === undefined ? margins.evaporation : margins.delivery;
    const litres = usedL / PACE_DAYS;
    const mostL = Math.max(dailyMostL, litres * (1 + margin));
    for (const { additive, gramsPerL } of recipe) {
      const before = paces.get(additive) ?? { perDay: 0, mostPerDay: 0, leastPerDay: 0 };
      paces.set(additive, {
        perDay: before.perDay + litres * gramsPerL,
        mostPerDay: before.mostPerDay + mostL * gramsPerL * (1 + useShare),
        leastPerDay: before.leastPerDay + litres * gramsPerL * (1 - margin) * (1 - useShare),
      });
    }
  }
  const salt = saltGPerDay(now);
  const ofVolume = MARGIN_SIGMAS * volume.sigma;
  return [
    ...[...paces].flatMap(([id, pace]) => (pace.mostPerDay > 0 ? [{ id, ...pace }] : [])),
    ...(salt > 0
      ? [
          {
            ...{ id: 'salt' as const, perDay: salt },
            ...{ mostPerDay: salt * (1 + ofVolume), leastPerDay: salt * (1 - ofVolume) },
          },
        ]
      : []),
  ];
}
