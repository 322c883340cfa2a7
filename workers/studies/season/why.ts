import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { inOrder, type Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import type { SimulationOptions } from '../../engine/simulation';
import type { RanUntil } from '../fit/turnedAt';
import { changesLogged, pastRun, pastScenario, type Course, type Past } from './pastRun';
import { readingsOf, seasonQuantities, type SeasonId, type SeasonQuantity } from './quantity';
import { sharesOf, type Share } from './share';
import { strayed, type Strayed } from './strayed';
import { wouldTell, type Would } from './wouldTell';

/** What the log shows of one quantity, and what moved it. */
export interface Moved {
  readonly id: SeasonId;
  /** Readings that count; 1 is a level without a slope. */
  readonly readings: number;
  readonly latest: { readonly at: string; readonly value: number } | undefined;
  readonly since:
    | {
        readonly at: string;
        readonly days: number;
        /** As the plan says it moved, and by whose share. */
        readonly planned: number;
        readonly shares: readonly Share[];
        /** As it was read, and two σ of it. */
        readonly read: number;
        readonly giveOrTake: number;
        /** Whether readings and plan differ by more than that. */
        readonly differs: boolean;
        readonly would: readonly Would[];
      }
    | undefined;
}

/** The past of a season. */
export interface Why {
  readonly moved: readonly Moved[];
  /** Undefined where nothing was read twice. */
  readonly span:
    | {
        readonly from: string;
        readonly days: number;
        /** The use on the first day, and whether the alkalinity of the log tells it. */
        readonly useDkhPerDay: number;
        readonly useIsRead: boolean;
        readonly changes: 'logged' | 'planned' | 'none';
      }
    | undefined;
}

export interface WhyQuestion {
  readonly plan: Scenario;
  readonly readings: readonly Reading[];
  readonly ran: readonly RanUntil[];
  readonly backDays: number;
  /** What the corals take, where the alkalinity of the log does not tell. */
  readonly useDkhPerDay: number;
}

const SIGMAS = 2;
/** Two readings closer than this are one, h. */
const LEAST_H = 24;
/** Alkalinity over fewer days says less of a season's use than the fit does, h. */
const LEAST_USE_H = 7 * 24;
/** Nearer than tests tell over months, dKH. */
const CLOSE_DKH = 0.15;
const MOST_TRIES = 5;

interface Own {
  readonly quantity: SeasonQuantity;
  readonly readings: readonly { readonly at: string; readonly value: number }[];
}

const isTwice = ({ readings }: Own): boolean =>
  readings.length > 1 && hoursOf(readings.at(-1)!.at) - hoursOf(readings[0]!.at) >= LEAST_H;

/** What moved calcium, magnesium and salinity since the first readings of the last so many days. */
export function whyMoved(question: WhyQuestion, options: SimulationOptions): Why {
  const all = inOrder(question.readings);
  const lastAt = all.at(-1)?.at;
  const since = lastAt === undefined ? '' : localTimeOf(hoursOf(lastAt) - question.backDays * 24);
  const readings = all.filter(({ at }) => at >= since);
  const own = seasonQuantities.map((quantity): Own => ({
    ...{ quantity, readings: readingsOf(quantity, readings) },
  }));
  const twice = own.filter(isTwice);
  const told = ({ quantity, readings: found }: Own): Moved => ({
    ...{ id: quantity.id, readings: found.length, since: undefined },
    // What was read before the days that are looked back over is still the newest that is known.
    latest: readingsOf(quantity, all).at(-1),
  });
  if (twice.length === 0) return { moved: own.map(told), span: undefined };
  const hours = twice.flatMap(({ readings: found }) => [found[0]!.at, found.at(-1)!.at]);
  const startH = Math.floor(Math.min(...hours.map(hoursOf)));
  const endH = Math.floor(Math.max(...hours.map(hoursOf)));
  const cutsH = hours.map((at) => Math.round(hoursOf(at)) - startH);
  const { plan, ran } = question;
  const past: Past = { plan, readings, ran, startH, endH, cutsH };
  const scenario = pastScenario(past);
  const use = useOf(past, scenario, question.useDkhPerDay, options);
  const course = pastRun(past, scenario, use.dkhPerDay, options);
  const look = (one: Own) => strayedOf(one, course, startH);
  const salinity = twice.find(({ quantity }) => quantity.id === 'salinity');
  const salt = salinity && look(salinity);
  const salinityShare =
    salt && Math.abs(salt.by) > SIGMAS * salt.sigma ? salt.by / scenario.tank.salinityPractical : 0;
  const moved = own.map((one): Moved => {
    if (!isTwice(one)) return told(one);
    const found = look(one);
    const at = (value: string) => Math.min(course.endsH, Math.round(hoursOf(value)) - startH);
    const [fromH, toH] = [at(one.readings[0]!.at), at(one.readings.at(-1)!.at)];
    const { quantity } = one;
    const values = course.hourly(quantity.column);
    const [from, to] = [values[fromH]!, values[toH]!];
    const stretches = course.between(fromH, toH);
    const planned = to - from;
    const differs = Math.abs(found.by) > SIGMAS * found.sigma;
    const endsOff = (other: Scenario) =>
      pastRun(past, other, use.dkhPerDay, options).hourly(quantity.column)[toH]! - to;
    const stray = { id: quantity.id, by: found.by, days: (toH - fromH) / 24, level: to };
    return {
      ...told(one),
      since: {
        ...{ at: one.readings[0]!.at, days: (toH - fromH) / 24, planned },
        shares: stretches.length === 0 ? [] : sharesOf(quantity, stretches, from, to),
        ...{ read: planned + found.by, giveOrTake: SIGMAS * found.sigma, differs },
        would: differs ? wouldTell({ ...stray, salinityShare, scenario, endsOff }) : [],
      },
    };
  });
  const changes = changesLogged(past) ? 'logged' : plansChanges(plan) ? 'planned' : 'none';
  return {
    moved,
    span: {
      ...{ from: localTimeOf(startH), days: (endH - startH) / 24, changes },
      ...{ useDkhPerDay: use.dkhPerDay, useIsRead: use.isRead },
    },
  };
}

const plansChanges = ({ waterChanges: { percent, continuousLPerDay } }: Scenario): boolean =>
  percent > 0 || continuousLPerDay > 0;

/** What was read of a quantity, off the run. */
function strayedOf({ quantity, readings }: Own, course: Course, startH: number): Strayed {
  const values = course.hourly(quantity.column);
  const timesH = readings.map(({ at }) => Math.round(hoursOf(at)) - startH);
  const off = readings.map(
    ({ value }, i) => value - values[Math.min(timesH[i]!, values.length - 1)]!,
  );
  return strayed(timesH, off, quantity.kitSigma);
}

/** The use on the first day at which alkalinity drifts as it was read. */
function useOf(
  past: Past,
  scenario: Scenario,
  known: number,
  options: SimulationOptions,
): { readonly dkhPerDay: number; readonly isRead: boolean } {
  const tests = past.readings.flatMap(({ at, alkalinityDkh }) => {
    const timeH = Math.round(hoursOf(at)) - past.startH;
    const counts = alkalinityDkh !== undefined && timeH >= 0 && timeH <= past.endH - past.startH;
    return counts ? [{ timeH, dkh: alkalinityDkh }] : [];
  });
  const overH = tests.length < 2 ? 0 : tests.at(-1)!.timeH - tests[0]!.timeH;
  if (overH < LEAST_USE_H) return { dkhPerDay: known, isRead: false };
  const off = (use: number) => {
    const run = pastRun(past, scenario, use, options).hourly('alkalinity_dkh');
    const last = run.length - 1;
    return strayed(
      tests.map(({ timeH }) => timeH),
      tests.map(({ timeH, dkh }) => dkh - run[Math.min(timeH, last)]!),
      1,
    ).by;
  };
  return secant(off, known, Math.max(2, 3 * known));
}

/** By secant steps from what is known, since every try is a run of months. */
function secant(
  off: (use: number) => number,
  known: number,
  most: number,
): { readonly dkhPerDay: number; readonly isRead: boolean } {
  let [a, offA] = [known, off(known)];
  let b = Math.max(0, Math.min(most, offA > 0 ? known * 0.9 : known * 1.1 + 0.02));
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    if (Math.abs(offA) <= CLOSE_DKH) return { dkhPerDay: a, isRead: true };
    const offB = off(b);
    const slope = (offB - offA) / (b - a);
    [a, offA] = [b, offB];
    if (!(slope > 0)) break;
    b = Math.max(0, Math.min(most, b - offB / slope));
    if (b === a) break;
  }
  return Math.abs(offA) <= CLOSE_DKH
    ? { dkhPerDay: a, isRead: true }
    : { dkhPerDay: known, isRead: false };
}
