import type { Counted } from '../../../shared/log/counted';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { datedDay } from '../../../shared/log/spokenTime';
import type { TankLog } from '../../../shared/log/tankLog';
import { say } from '../../../shared/words/stock';
import type { UsedUp } from '../../ask/outcome';
import { allPaces, supplyName } from './order';

const { runsOut: told } = say;

/** What runs out first, and when it may at the soonest and does as set: local times. */
export interface RunsOut {
  readonly what: string;
  readonly soonestAt: string;
  readonly asSetAt: string;
}

/** Whether anything was counted or filled, so that a day can be told at all. */
export const isCounted = ({ supplies, readings }: TankLog): boolean =>
  supplies.length > 0 ||
  readings.some(
    ({ testsLeft, event }) =>
      testsLeft !== undefined || event === 'reservoirFilled' || event === 'bottleFilled',
  );

const sameName = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();

/** What was counted last of each thing, when, and how fast it goes. */
function countsOf(log: TankLog, { supplies, vessels }: UsedUp, { readings, happened }: Counted) {
  const newest = happened.findLast(({ testsLeft }) => testsLeft !== undefined);
  const tests = newest
    ? [{ id: 'tests' as const, left: newest.testsLeft!, countedAt: newest.at }]
    : [];
  const paces = allPaces(supplies, readings);
  const counted = [...log.supplies, ...tests].flatMap(({ id, left, countedAt }) => {
    const pace = paces.find((one) => one.id === id);
    // Of what was counted twice the newer count stands.
    const isOlder = id === 'tests' && tests.some((one) => one.countedAt > countedAt);
    return pace && !isOlder ? [{ what: supplyName(id), left, at: countedAt, pace }] : [];
  });
  const filled = vessels.flatMap(({ pump, name = '', hasL, ...pace }) => {
    const last = happened.findLast(({ event, equipment = '' }) =>
      pump === undefined
        ? event === 'reservoirFilled'
        : event === 'bottleFilled' && (equipment.trim() === '' || sameName(equipment, name)),
    );
    const what = pump === undefined ? told.reservoir : told.bottle(name);
    return last ? [{ what, left: hasL, at: last.at, pace }] : [];
  });
  return [...counted, ...filled];
}

/** The soonest of all that was counted or filled; undefined where nothing was, or nothing is used. */
export function soonestOut(
  log: TankLog,
  usedUp: UsedUp,
  counted: Counted,
  now: string,
): RunsOut | undefined {
  const ends = countsOf(log, usedUp, counted).flatMap(({ what, left, at, pace }) => {
    const { perDay, mostPerDay } = pace;
    if (!(mostPerDay > 0) || at > now) return [];
    const after = (daily: number) => localTimeOf(hoursOf(at) + (24 * left) / daily);
    const soonestAt = after(mostPerDay);
    return [{ what, soonestAt, asSetAt: perDay > 0 ? after(perDay) : soonestAt }];
  });
  return ends.toSorted((a, b) => a.soonestAt.localeCompare(b.soonestAt))[0];
}

/** "“soda”, its bottle, may be empty from 4 December on, in 3 days (on 6 December as set)." */
export function runsOutText({ what, soonestAt, asSetAt }: RunsOut, now: string): string {
  const days = Math.floor((hoursOf(soonestAt) - hoursOf(now)) / 24);
  return days < 0
    ? told.since(what, datedDay(soonestAt))
    : told.by(what, datedDay(soonestAt), days, datedDay(asSetAt));
}
