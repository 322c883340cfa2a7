import type { SupplyId } from '../../../shared/log/supply';
import type { Pace } from '../../../shared/recipe/orderBy';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';
import { saltGPerDay } from '../../../shared/verdict/supplies';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { ByHand } from '../forecast/habit';
import { margins, MARGIN_SIGMAS, needsOf, type Need } from '../away/needs';
import { volume } from '../fit/doubts';

/** What a plan uses up, and how well that is known. */
export interface PaceQuestion {
  readonly now: Scenario;
  /** Two standard errors of the use, dKH a day. */
  readonly giveOrTakeDkhPerDay: number;
  /** What is poured in by hand goes on. */
  readonly byHand?: ByHand | undefined;
}

/** Grams a day of one powder, or of salt. */
export interface SupplyPace extends Pace {
  readonly id: SupplyId;
}

/** Reservoir or bottle: litres a day of it. */
export interface VesselPace extends Pace {
  /** Which pump, counted from 0; undefined for the top-off's reservoir. */
  readonly pump: number | undefined;
  readonly name: string | undefined;
  readonly hasL: number;
}

/** Everything that a plan uses up. */
export interface UsedUp {
  readonly supplies: readonly SupplyPace[];
  readonly vessels: readonly VesselPace[];
}

/** Two weeks have every day of the week twice. */
export const PACE_DAYS = 14;

type Recipe = readonly { readonly additive: AdditiveId; readonly gramsPerL: number }[];

/** A need as litres a day: as set, and at either end of what evaporates or a pump gives. */
function vesselPace({ pump, name, hasL, usedL, dailyMostL }: Need): VesselPace {
  const margin = pump === undefined ? margins.evaporation : margins.delivery;
  const perDay = usedL / PACE_DAYS;
  const mostPerDay = Math.max(dailyMostL, perDay * (1 + margin));
  return { pump, name, hasL, perDay, mostPerDay, leastPerDay: perDay * (1 - margin) };
}

/** What goes out of a vessel, by the engine as set and at most, turned to follow the use to the ends of its doubt. */
export function usedUp(
  { now, giveOrTakeDkhPerDay, byHand }: PaceQuestion,
  options: SimulationOptions = usualOptions,
): UsedUp {
  const { topOff, dosers, corals } = now;
  const { useDkhPerDay } = corals;
  const useShare = useDkhPerDay > 0 ? Math.min(1, giveOrTakeDkhPerDay / useDkhPerDay) : 0;
  const paces = new Map<AdditiveId, Pace>();
  const add = (additive: AdditiveId, pace: Pace) => {
    const before = paces.get(additive) ?? { perDay: 0, mostPerDay: 0, leastPerDay: 0 };
    paces.set(additive, {
      perDay: before.perDay + pace.perDay,
      mostPerDay: before.mostPerDay + pace.mostPerDay,
      leastPerDay: before.leastPerDay + pace.leastPerDay,
    });
  };
  const vessels = needsOf(now, PACE_DAYS, options).map(vesselPace);
  for (const { pump, ...litres } of vessels) {
    const recipe: Recipe =
      pump !== undefined
        ? dosers[pump]!.recipe
        : topOff.reservoirL > 0 && topOff.additive !== 'none'
          ? [{ additive: topOff.additive, gramsPerL: topOff.gramsPerL }]
          : [];
    for (const { additive, gramsPerL } of recipe) {
      add(additive, {
        perDay: litres.perDay * gramsPerL,
        mostPerDay: litres.mostPerDay * gramsPerL * (1 + useShare),
        leastPerDay: litres.leastPerDay * gramsPerL * (1 - useShare),
      });
    }
  }
  for (const { additive, gramsEach, everyDays } of byHand?.doses ?? []) {
    const perDay = gramsEach / everyDays;
    add(additive, {
      perDay,
      ...{ mostPerDay: perDay * (1 + useShare), leastPerDay: perDay * (1 - useShare) },
    });
  }
  const salt = saltGPerDay(now);
  const ofVolume = MARGIN_SIGMAS * volume.sigma;
  const supplies: SupplyPace[] = [
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
  return { supplies, vessels: vessels.filter(({ mostPerDay }) => mostPerDay > 0) };
}

/** The powders and the salt of it. */
export const pacesOf = (question: PaceQuestion, options?: SimulationOptions) =>
  usedUp(question, options).supplies;
