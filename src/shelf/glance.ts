import { countedReadings } from '../../shared/log/counted';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { outsideNow, type Outside } from '../../shared/log/newest';
import { toxicAmmonia } from '../../shared/log/toxicAmmonia';
import type { Scenario } from '../../shared/scenario/schema';
import type { LogAnswer, UsedUp } from '../ask/outcome';
import { soonestOut, type RunsOut } from '../say/stock/runsOut';
import { isTestDue, testDueH } from '../ask/testDue';
import type { Tank } from '../store/tanks';

/** What a tank's log says, in so few words that forty of them lie side by side. */
export interface Glance {
  readonly tank: Tank;
  readonly plan: Scenario;
  /** Undefined while it is worked out; a sentence where the log says nothing yet. */
  readonly answer: LogAnswer | string | undefined;
  /** Newest readings that are outside the tank's own limits. */
  readonly outside: readonly Outside[];
  /** Whether more ammonia harms than the keeper allows. */
  readonly isToxic: boolean;
  /** Whether its alkalinity is outside by now, as it was read or as the fit has it. */
  readonly isOut: boolean;
  /** What its alkalinity is by now, dKH, as the forecast has it; undefined where that is too old to tell. */
  readonly nowDkh: number | undefined;
  /** Days of the calendar until there is one chance in ten that it has left, below 0 where that is past; undefined when there is not within four weeks. */
  readonly leavesInDays: number | undefined;
  /** When to test next, as a local time; undefined while nothing tells. */
  readonly testAt: string | undefined;
  readonly isTestDue: boolean;
  /** What runs out first; undefined where nothing was counted or filled, or while it is worked out. */
  readonly runsOut: RunsOut | undefined;
  /** Whether many readings tell nothing: something about them, or about the plan, is wrong. */
  readonly isPuzzling: boolean;
}

/** A log of so many alkalinity readings has an answer, where nothing is wrong. */
const ENOUGH_TESTS = 5;

const DAY_H = 24;

/** What is seen of a tank at a moment, a local time. */
export function glanceOf(
  tank: Tank,
  answer: LogAnswer | string | undefined,
  now: string,
  usedUp?: UsedUp,
): Glance {
  const plan = tank.bench.plans[0]!.scenario;
  const counted = countedReadings(tank.log, now);
  const { readings } = counted;
  const outside = outsideNow(plan, readings);
  const told = typeof answer === 'object' ? answer : undefined;
  const endH = told && hoursOf(told.fit.startAt) + told.fit.endH;
  const nowH = hoursOf(now);
  /** By the calendar, as the log names the day. */
  const dayOf = (hours: number) => Math.floor(hours / DAY_H);
  const fromNow = (hours: number | undefined) => {
    if (hours === undefined) return undefined;
    const atH = endH! + hours;
    return atH < nowH ? -1 : dayOf(atH) - dayOf(nowH);
  };
  const isOut =
    (told !== undefined && told.leaving === undefined) ||
    outside.some(({ band: { id } }) => id === 'alkalinity');
  return {
    ...{ tank, plan, answer, outside, isOut },
    isToxic: toxicAmmonia(plan, readings) !== undefined,
    nowDkh: told?.fan.ahead.dkh[Math.max(0, Math.round(nowH - endH!))],
    leavesInDays: fromNow(told?.leaving?.oneInTenH),
    testAt: told && localTimeOf(testDueH(told)),
    isTestDue: told !== undefined && isTestDue(told, now),
    runsOut: usedUp && soonestOut(tank.log, usedUp, counted, now),
    isPuzzling:
      typeof answer === 'string' &&
      readings.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined).length >= ENOUGH_TESTS,
  };
}

/** How soon a tank wants to be looked at: what is outside first, what nobody has measured last. */
function soonness(glance: Glance): number {
  const { isOut, isToxic, leavesInDays, answer, outside, isTestDue: isDue, isPuzzling } = glance;
  if (isToxic) return -4;
  if (isOut) return -3;
  if (outside.length > 0) return -2;
  if (isPuzzling) return -1;
  if (leavesInDays !== undefined) return Math.max(0, leavesInDays);
  if (isDue) return 1e3;
  return typeof answer === 'object' ? 1e4 : 1e5;
}

/** The tank that wants to be looked at soonest first; otherwise in the order they stand in. */
export const bySoonness = (glances: readonly Glance[]): Glance[] =>
  glances.toSorted((a, b) => soonness(a) - soonness(b));
