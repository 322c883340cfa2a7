import { median } from 'd3-array';
import type { Reading } from '../../../shared/log/reading';
import { hoursOf } from '../../../shared/log/localTime';
import type { Scenario } from '../../../shared/scenario/schema';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { limewaterSaturationGPerL } from '../../../shared/seawater/limewater';
import { oxidisedMeqPerG, type AdditiveId } from '../../../shared/species/additives';

/** A line through the log: what pencil and paper make of it. */
export interface ByHand {
  readonly startDkh: number;
  readonly useDkhPerDay: number;
}

/** More readings than this tell the line no better. */
const MOST = 80;

/** What pumps and top-off bring a day, dKH. */
function suppliedDkhPerDay({ dosers, topOff, evaporation, tank }: Scenario): number {
  const meqPerDay = (litres: number, additive: AdditiveId, gramsPerL: number) =>
    litres * gramsPerL * oxidisedMeqPerG(additive);
  const pumps = dosers.flatMap(({ mlPerDay, recipe }) =>
    recipe.map(({ additive, gramsPerL }) => meqPerDay(mlPerDay / 1000, additive, gramsPerL)),
  );
  const { additive, gramsPerL } = topOff;
  const most = additive === 'calciumHydroxide' ? limewaterSaturationGPerL(tank.tempC) : Infinity;
  const topped =
    additive === 'none' || topOff.reservoirL === 0
      ? 0
      : meqPerDay(evaporation.litresPerDay, additive, Math.min(gramsPerL, most));
  const meq = pumps.reduce((sum, one) => sum + one, topped);
  return meq / tank.volumeL / meqPerLPerDkh;
}

/** The fall of the readings with what was dosed added back: where the fit begins. */
export function byHand(plan: Scenario, log: readonly Reading[]): ByHand {
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const every = Math.ceil(tested.length / MOST);
  const points = tested
    .filter((_, i) => i % every === 0)
    .map(({ at, alkalinityDkh }) => ({ day: hoursOf(at) / 24, dkh: alkalinityDkh! }));
  // The median of all pairs' slopes (Theil 1950): one wild reading hardly moves it.
  const slopes = points.flatMap((a, i) =>
    points
      .slice(i + 1)
      .flatMap((b) => (b.day - a.day > 0.2 ? [(b.dkh - a.dkh) / (b.day - a.day)] : [])),
  );
  const slope = median(slopes) ?? 0;
  const firstDay = points[0]!.day;
  const days = Math.max(1, points.at(-1)!.day - firstDay);
  const poured = log.reduce(
    (sum, { additive, grams }) => sum + (additive && grams ? grams * oxidisedMeqPerG(additive) : 0),
    0,
  );
  const pouredDkh = poured / plan.tank.volumeL / meqPerLPerDkh;
  return {
    startDkh: median(points, ({ day, dkh }) => dkh - slope * (day - firstDay))!,
    useDkhPerDay: Math.max(0.02, suppliedDkhPerDay(plan) + pouredDkh / days - slope),
  };
}
