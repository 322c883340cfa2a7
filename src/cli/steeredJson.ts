import type { SteerTold } from '../../workers/desk/logQuestions';
import { named } from './lineJson';
import { endsJson, firstJson, loweringJson, passedJson } from './seasonJson';

/** Calcium, magnesium and salinity beside a turn, for other programs. */
export function steeredJson({ steered }: SteerTold) {
  if (!steered) return undefined;
  const { wanting, first, lowerings, together } = steered;
  return {
    wanting: wanting.map(({ id, level, side, limit, leavesDay }) => ({
      ...{ quantity: id, side, leavesDay },
      ...{ ...named('level', id, level), ...named('limit', id, limit) },
    })),
    first: firstJson(first),
    lowerings: lowerings.map(loweringJson),
    together: together && {
      ...{ days: together.days, holds: together.holds },
      ends: together.ends && endsJson(together.ends),
      alkalinityByDkh: together.alkalinityByDkh,
      alkalinityPasses: together.alkalinityPasses && passedJson(together.alkalinityPasses),
      leavesSooner: together.leavesSooner.map(({ id, side, limit, day }) => ({
        ...{ quantity: id, side, day },
        ...named('limit', id, limit),
      })),
      ...{ largestDailyDkh: together.largestDailyDkh, scenario: together.scenario },
    },
  };
}
