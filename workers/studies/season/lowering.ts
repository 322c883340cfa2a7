import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Stretch } from '../turn/replay';
import { metals, type Metal } from './metals';
import { newWaterHolds } from './newWater';
import { type First } from './firstDays';

import { daily, type SeasonTank } from './seasonTank';
import { bottlesBring } from './weeklyDoses';
import { bringsOnly, SEASON_DAYS } from './weeks';

/** What brings down what is too high, each replayed. */
export type Way =
  /** It falls by itself as the tank runs. */
  | { readonly kind: 'wait'; readonly days: number }
  /** The bottles' salt of that metal is left out until then. */
  | { readonly kind: 'leaveOut'; readonly days: number }
  /** So much water each week, with the keeper's mix. */
  | {
      readonly kind: 'change';
      readonly percent: number;
      readonly litres: number;
      readonly days: number;
    };

/** A metal above its band, and what would bring it back inside, the quickest first. */
export interface Lowering {
  readonly id: Metal;
  readonly above: number;
  readonly limit: number;
  readonly ways: readonly Way[];
  /** What the new water holds of it, mg/L: above the band no change of water helps. */
  readonly newWaterHolds: number;
}

const PERCENTS = [10, 20, 30];

/** Bottles without what brings a metal and no alkalinity; undefined where none does. */
function without(now: Scenario, metal: Metal): Scenario | undefined {
  if (!bottlesBring(now, metal)) return undefined;
  const dosers = now.dosers.map((doser) => {
    const recipe = doser.recipe.filter(({ additive }) => !bringsOnly(additive, metal));
    return { ...doser, recipe, mlPerDay: recipe.length > 0 ? doser.mlPerDay : 0 };
  });
  return { ...now, dosers };
}

/** The tank as it runs by such a way. */
export function loweredBy(now: Scenario, metal: Metal, way: Way): Scenario {
  if (way.kind === 'wait') return now;
  if (way.kind === 'leaveOut') return without(now, metal)!;
  return { ...now, waterChanges: { ...now.waterChanges, percent: way.percent, everyDays: 7 } };
}

/** What is above its band, and how it comes back inside while all else goes on. */
export function loweringsOf(tank: SeasonTank, first: First, mostPerDay: MostPerDay): Lowering[] {
  const { now } = tank;
  const { percent: ownPercent } = now.waterChanges;
  const newWater = newWaterHolds(now);
  const poured: readonly Stretch[] = first.kind === 'first' ? [first.stretch] : [];
  return metals
    .filter((metal) => tank.level(metal) > tank.band(metal).high)
    .map((id): Lowering => {
      const { high } = tank.band(id);
      /** Days until it is inside; undefined where it does not get there, or something else is passed. */
      const daysBy = (scenario: Scenario): number | undefined => {
        const stretches = [
          ...poured,
          { scenario: { ...scenario, days: SEASON_DAYS }, untilDay: SEASON_DAYS },
        ];
        const replay = tank.replay(stretches);
        const day = daily(replay, id).findIndex((mean) => mean <= high);
        const [passed] = tank.passed(replay, SEASON_DAYS, mostPerDay, tank.uses[0]!);
        return day < 0 || (passed && passed.firstH < day * 24) ? undefined : day + 1;
      };
      const left = without(now, id);
      const [wait, leaveOut] = [daysBy(now), left && daysBy(left)];
      const changes = PERCENTS.filter((percent) => percent > ownPercent).flatMap(
        (percent): Way[] => {
          const waterChanges = { ...now.waterChanges, percent, everyDays: 7 };
          const days = daysBy({ ...now, waterChanges });
          const litres = (percent / 100) * now.tank.volumeL;
          return days === undefined ? [] : [{ kind: 'change', percent, litres, days }];
        },
      );
      const ways: readonly Way[] = [
        ...(wait === undefined ? [] : [{ kind: 'wait' as const, days: wait }]),
        ...(leaveOut === undefined ? [] : [{ kind: 'leaveOut' as const, days: leaveOut }]),
        // The smallest change that is quicker than waiting.
        ...changes.filter(({ days }) => wait === undefined || days < wait).slice(0, 1),
      ];
      return {
        ...{ id, above: tank.level(id), limit: high, newWaterHolds: newWater[id] },
        ways: ways.toSorted((a, b) => a.days - b.days),
      };
    });
}
