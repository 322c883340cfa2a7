import type { Pace } from '../recipe/orderBy';
import { hoursOf } from './localTime';
import type { Reading } from './reading';

/** Nobody should test less than weekly (common practice). */
const LEAST_PER_DAY = 1 / 7;
/** How often somebody tests now, not last year. */
const LOOKED_BACK_DAYS = 28;

/** Alkalinity tests a day, as the log has them of late: counts differ by their root, twice that here. */
export function testPace(readings: readonly Reading[]): Pace {
  const tests = readings.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const newestH = Math.max(...tests.map(({ at }) => hoursOf(at)));
  const agoDays = tests
    .map(({ at }) => (newestH - hoursOf(at)) / 24)
    .filter((days) => days < LOOKED_BACK_DAYS);
  const spanDays = Math.max(7, ...agoDays.map((days) => days + 1));
  const perDay = Math.max(LEAST_PER_DAY, agoDays.length / spanDays);
  const byDoubt = (2 * Math.sqrt(Math.max(1, agoDays.length))) / spanDays;
  return {
    perDay,
    mostPerDay: perDay + byDoubt,
    leastPerDay: Math.max(LEAST_PER_DAY / 2, perDay - byDoubt),
  };
}
