import type { Scenario } from '../scenario/schema';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { alkalinityMeqPerG } from '../species/additives';

/** What one dosing pump does when it sticks on and empties its bottle into a tank that stands at the target. */
export interface BottleDump {
  /** Which pump, counted from 0. */
  readonly pump: number;
  readonly name: string;
  /** Where alkalinity ends, dKH: what the bottle holds, with no use and no chalk. */
  readonly endDkh: number;
  /** Minutes of running until nearly the keeper's highest alkalinity. */
  readonly minutes: number;
  /** The most that may stand in the bottle so that even all of it stays below that, L. */
  readonly fillL: number;
  /** Days of dosing in so much. */
  readonly days: number;
}

/** Left for the day's swing and what a test cannot tell, dKH: common practice. */
const SPARE_DKH = 0.3;

/** The pumps whose whole bottle would take the tank past its highest alkalinity: plain arithmetic. */
export function bottleDumps({ dosers, tank, limits }: Scenario): BottleDump[] {
  const roomDkh = Math.max(0, limits.alkalinityHighDkh - SPARE_DKH - tank.alkalinityDkh);
  return dosers.flatMap(({ name, recipe, stockL, mlPerDay, schedule }, pump) => {
    const meqPerL = recipe.reduce(
      (sum, { additive, gramsPerL }) => sum + gramsPerL * alkalinityMeqPerG(additive),
      0,
    );
    const dkhPerL = meqPerL / meqPerLPerDkh / tank.volumeL;
    if (dkhPerL * stockL <= roomDkh) return [];
    const fillL = roomDkh / dkhPerL;
    return [
      {
        ...{ pump, name, fillL, endDkh: tank.alkalinityDkh + dkhPerL * stockL },
        minutes: (fillL * 1000) / schedule.pumpMlPerMin,
        days: (fillL * 1000) / mlPerDay,
      },
    ];
  });
}
