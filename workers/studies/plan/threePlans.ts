import type { Kit } from '../../../shared/recipe/kit';
import type { PairNames } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { toppedOffLPerDay } from '../../../shared/verdict/measures';
import { verdictOf, type Verdict } from '../../../shared/verdict/verdict';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { ByHand } from '../forecast/habit';
import { atRest } from './atRest';
import { watching, type Today, type Watch } from './breaches';
import { PLAN_DAYS } from './holding';
import type { Open } from './onTarget';
import { nearest, type Nearest, type Refused } from './nearest';
import { judged, LEAST_PROMISE_DAYS, type Judged } from './offered';
import { todayOf } from './today';
import { useEnds, type UseEnds } from './useEnds';
import { withReference } from './withReference';
import {
  evaporatingLPerDay,
  limewaterFirst,
  twoPartAlone,
  waterChangesAlone,
  wellStocked,
  type Way,
} from './ways';

/** What is wanted of a plan, and how well the consumption is known. */
export interface PlanQuestion {
  /** The tank as it stands, with today's consumption. */
  readonly now: Scenario;
  readonly targetDkh: number;
  /** Two standard errors of the consumption, dKH/day. */
  readonly giveOrTakeDkhPerDay: number;
  /** What the log leaves open, for the odds; undefined where no log tells. */
  readonly open?: Open;
  readonly kit: Kit;
  /** What new pumps are called; by what they bring where nothing is given. */
  readonly pairNames?: PairNames;
  /** The bottles of a pair are turned each by itself; together where nothing is said. */
  readonly unlinked?: boolean;
  /** What is poured in by hand again and again; nothing of it is in `now`. */
  readonly byHand?: ByHand | undefined;
}

/** A plan replayed: what it says against the limits, and for how long it can be promised. */
export interface Candidate extends Way, Judged {
  readonly verdict: Verdict;
  /** Fresh water that the top-off brings, L a day. */
  readonly toppedOffLPerDay: number;
  /** Alkalinity hour by hour, dKH. */
  readonly dkh: Float64Array;
  /** A plan that cannot be promised is shown with its reason, and not offered. */
  readonly offered: boolean;
  /** What would do instead, where something is near. */
  readonly nearest: Nearest | undefined;
}

const ways = [limewaterFirst, twoPartAlone, waterChangesAlone] as const;

/** A plan begins at the target: where alkalinity stands today is no excuse. */
const withoutAlkalinity = (today: Today): Today =>
  today.filter(({ quantity }) => quantity !== 'alkalinity' && quantity !== 'alkalinityChange');

/** Changes that break a limit the first time are no plan, however calm the days before them. */
const leastDaysOf = ({ id, scenario: { waterChanges } }: Way): number =>
  Math.max(LEAST_PROMISE_DAYS, id === 'waterChanges' ? waterChanges.everyDays + 1 : 0);

type Replayed = Omit<Candidate, 'nearest'>;

function replay(watch: Watch, endsOf: UseEnds, way: Way, question: PlanQuestion): Replayed {
  const { scenario } = way;
  const { run } = watch(scenario);
  const { giveOrTakeDkhPerDay, open } = question;
  const found = judged(watch, endsOf, scenario, giveOrTakeDkhPerDay, open, leastDaysOf(way));
  return {
    ...way,
    ...found,
    offered: found.refusal === undefined,
    verdict: verdictOf(scenario, run),
    toppedOffLPerDay: toppedOffLPerDay(run.trace),
    dkh: readColumn(run.trace, 'alkalinity_dkh').slice(),
  };
}

/**
 * Three plans that hold the target from the day on which the water stands at it, each solved on
 * runs of the engine and replayed as rounded for scale and pump.
 */
export function threePlans(
  question: PlanQuestion,
  options: SimulationOptions = usualOptions,
): Candidate[] {
  const { targetDkh } = question;
  const now = withReference(question.now, options);
  const watch = watching(options, withoutAlkalinity(todayOf(now, question, options)));
  const runPlan = (scenario: Scenario) => watch(scenario).run;
  const endsOf = useEnds(atRest(now, options));
  const standing = (alkalinityDkh: number, co2Ppm = now.room.co2Ppm): Scenario => ({
    ...now,
    days: PLAN_DAYS,
    additions: [],
    room: { ...now.room, co2Ppm },
    start: { ...now.start, carbon: 'settledCycle' },
    tank: { ...now.tank, alkalinityDkh },
  });
  const litresPerDay = evaporatingLPerDay(runPlan, standing(targetDkh));
  const solved =
    (find: (typeof ways)[number]): Refused['solved'] =>
    ({ targetDkh: aim = targetDkh, co2Ppm }) => {
      const stocked = wellStocked(standing(aim, co2Ppm), litresPerDay);
      return find(runPlan, stocked, aim, question.pairNames);
    };
  const found = ways.map((find) => replay(watch, endsOf, solved(find)({}), question));
  const near = nearestOf();
  return found.map((one) => ({ ...one, nearest: one.offered ? undefined : near }));

  /** Another of the three, or else what would make the pumps do. */
  function nearestOf(): Nearest | undefined {
    const other = found.find(({ offered }) => offered);
    if (other) {
      const { id, otherSalt, scenario } = other;
      return { kind: 'otherWay', way: { id, ...(otherSalt && { otherSalt }) }, scenario };
    }
    const way = found.find(({ id }) => id === 'twoPart')!;
    const { giveOrTakeDkhPerDay } = question;
    return nearest(watch, endsOf, {
      ...{ way, refusal: way.refusal!, giveOrTakeDkhPerDay, solved: solved(twoPartAlone) },
    });
  }
}
