import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { Scenario } from '../../../shared/scenario/schema';
import { dayMeans } from '../dayMeans';
import { PLAN_DAYS } from '../plan/holding';
import type { Ahead } from '../season/ahead';
import type { SeasonId } from '../season/quantity';
import { isTurnedAgain, meanOf, type Passed, type SeasonTank } from '../season/seasonTank';
import { asOnePlan, laid } from './laid';
import { leavesSooner, type LeavesSooner } from './leavesSooner';
import type { Replay, Stretch } from './replay';

/** What is poured and changed for the three, run as one with what is turned for alkalinity. */
export interface Together {
  /** Whether what holds the season is in it, and not the first mornings alone. */
  readonly holds: boolean;
  /** Days that were run, at every use that is possible. */
  readonly days: number;
  /** Means of the day after the last morning; undefined where nothing is done first. */
  readonly ends: Readonly<Record<SeasonId, number>> | undefined;
  /** Alkalinity against that of the turn alone at the end, dKH: the farthest of all uses. */
  readonly alkalinityByDkh: number;
  /** Alkalinity that passes a limit by it once the mornings are over, at the use that is worst for it. */
  readonly alkalinityPasses: Passed | undefined;
  /** What of the three is brought out of its band by it, or sooner than it leaves by itself. */
  readonly leavesSooner: readonly LeavesSooner[];
  readonly largestDailyDkh: number;
  /** As it was run. */
  readonly stretches: readonly Stretch[];
  /** All of it as one plan, to be tried. */
  readonly scenario: Scenario;
}

/** A season's first mornings, and what then holds it, laid over a turn; undefined where there is neither. */
export function together(
  tank: SeasonTank,
  { first, weekly }: Ahead,
  mostPerDay: MostPerDay,
): Together | undefined {
  const mornings = first.kind === 'first' ? first : undefined;
  const then = weekly.kind === 'turned' ? weekly.stretches.at(-1)!.scenario : undefined;
  const both = { first: mornings?.stretch, then };
  const isKept = (use: number) =>
    tank.passedBeside(both, mostPerDay, use).every((one) => isTurnedAgain(one, both)) &&
    tank.fartherBeside(both, use).length === 0;
  const holds = then !== undefined && tank.uses.every(isKept);
  if (!mornings && !holds) return undefined;
  const beside = holds ? both : { first: mornings!.stretch };
  const days = Math.max(PLAN_DAYS, (mornings?.stretch.untilDay ?? 0) + 1);
  const runs = tank.uses.map((use) => tank.turnedWith(beside, days, use));
  const without = tank.uses.map((use) => tank.turnedWith({}, days, use));
  const by = runs.map((run, i) => lastDay(run) - lastDay(without[i]!));
  const of = (id: SeasonId) => meanOf(runs[0]!, id, mornings!.endsFromH, mornings!.endsFromH + 24);
  return {
    ...{ holds, days, stretches: laid(tank.now, tank.turned, beside, days) },
    ends: mornings && {
      ...{ calcium: of('calcium'), magnesium: of('magnesium'), salinity: of('salinity') },
    },
    alkalinityByDkh: by.reduce((far, one) => (Math.abs(one) > Math.abs(far) ? one : far), 0),
    alkalinityPasses: tank.uses
      .flatMap((use) => tank.passedBeside(beside, mostPerDay, use))
      .filter((one) => isTurnedAgain(one, beside))
      .toSorted((a, b) => a.firstH - b.firstH)[0],
    leavesSooner: leavesSooner(
      tank,
      runs.map((run, i) => [run, without[i]!] as const),
    ),
    largestDailyDkh: Math.max(...runs.map(({ largestMoveDkh }) => largestMoveDkh)),
    scenario: asOnePlan(tank.now, tank.turned, beside),
  };
}

const lastDay = ({ dkh }: Replay): number => dayMeans(dkh).at(-1) ?? dkh.at(-1)!;
