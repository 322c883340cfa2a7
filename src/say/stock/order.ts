import { datedDay } from '../../../shared/log/spokenTime';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { Supply, SupplyId } from '../../../shared/log/supply';
import { testPace } from '../../../shared/log/testPace';
import { orderBy, type Pace } from '../../../shared/recipe/orderBy';
import { additives } from '../../../shared/species/additives';
import { toFigures } from '../../../shared/units/digits';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/stock';
import type { SupplyPace } from '../../ask/outcome';

const { orders: told } = say;

const DAYS_A_MONTH = 30;
/** A kitchen scale for powders shows tenths of a gram. */
const SCALE_G = 0.1;
/** What lasts longer is said in years. */
const LONG_DAYS = 730;
const figures = (value: number, count: number) => figure(toFigures(value, count));

/** What is bought. */
export const supplyName = (id: SupplyId): string =>
  id === 'salt' ? told.salt : id === 'tests' ? told.tests : additives[id].label;

/** What a keeper counts it in, and how many of what is kept are one of it. */
export const supplyUnit = (id: SupplyId): { readonly unit: string; readonly each: number } =>
  id === 'salt'
    ? { unit: 'kg', each: 1000 }
    : id === 'tests'
      ? { unit: '', each: 1 }
      : { unit: 'g', each: 1 };

/** How fast everything goes that a keeper buys: by the plan, and tests by the log. */
export const allPaces = (plan: readonly SupplyPace[], readings: readonly Reading[]) => [
  ...plan,
  { id: 'tests' as const, ...testPace(readings) },
];

/** How fast it goes. */
export function paceText(id: SupplyId, { perDay, leastPerDay, mostPerDay }: Pace): string {
  if (id === 'tests') {
    const [week, least, most] = [perDay, leastPerDay, mostPerDay].map((n) => figures(n * 7, 2));
    return told.usesTests(week!, least!, most!);
  }
  if (id !== 'salt' && perDay < SCALE_G) {
    const [least, most] = [leastPerDay, mostPerDay].map((n) => figures(n * DAYS_A_MONTH, 2));
    return told.usesLittle(figures(perDay * DAYS_A_MONTH, 3), least!, most!);
  }
  const [day, month] = [figures(perDay, 3), figures(perDay * DAYS_A_MONTH, 3)];
  return told.uses(day, month, figures(leastPerDay, 2), figures(mostPerDay, 2));
}

/** By when to order it; `today` is a local time. */
export function orderText(
  { left, countedAt }: Supply,
  pace: Pace,
  shopDays: number,
  today: string,
): string {
  const found = orderBy(left, pace, shopDays);
  if (!found) return '';
  const on = (days: number) => datedDay(localTimeOf(hoursOf(countedAt) + days * 24));
  const { orderDays, soonestDays, asSetDays, latestDays } = found;
  const sinceDays = Math.floor((hoursOf(today) - hoursOf(countedAt)) / 24);
  if (sinceDays > soonestDays) return told.outAlready(on(soonestDays));
  if (orderDays - sinceDays > LONG_DAYS) {
    return told.lasts(Math.floor((soonestDays - sinceDays) / 365));
  }
  const latest = latestDays === undefined ? told.never : on(latestDays);
  const when = [on(soonestDays), latest, on(asSetDays)] as const;
  return orderDays <= sinceDays ? told.now(...when) : told.by(on(orderDays), ...when);
}
