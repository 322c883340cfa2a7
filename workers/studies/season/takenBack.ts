import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import { PLAN_DAYS } from '../plan/holding';
import { widestDay, type Stretch } from '../turn/replay';
import { metals, type Metal } from './metals';
import { columnOf, UNTOLD, type SeasonTank } from './seasonTank';

/** A metal that the keeper's own changes of water move faster than it may, once it stands higher, mg/L in a day. */
export interface TakenBack {
  readonly id: Metal;
  readonly byMgPerL: number;
}

/** What a change of water takes back at once of what the first mornings brought, or lowered, from an hour on. */
export function takenBack(
  tank: SeasonTank,
  first: Stretch,
  fromH: number,
  mostPerDay: MostPerDay,
): TakenBack[] {
  const days = Math.max(PLAN_DAYS, first.untilDay + 1);
  const [use] = tank.uses;
  const [run, alone] = [{ first }, {}].map((beside) => tank.turnedWith(beside, days, use!));
  return metals.flatMap((id): TakenBack[] => {
    const by = (hourly: readonly number[]) => widestDay(hourly, Math.ceil(fromH), hourly.length);
    const [byMgPerL, anyway] = [run!, alone!].map((one) => by(one.hourly(columnOf[id])));
    return byMgPerL! > UNTOLD * Math.max(mostPerDay[id], anyway!)
      ? [{ id, byMgPerL: byMgPerL! }]
      : [];
  });
}
