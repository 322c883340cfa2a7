import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { Scenario } from '../../../shared/scenario/schema';
import { limitBands, type Band } from '../../../shared/scenario/limitBands';
import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import type { SimulationOptions } from '../../engine/simulation';
import { dayMeans } from '../dayMeans';
import { stillInside } from '../plan/breaches';
import { PLAN_DAYS } from '../plan/holding';
import { standingAt } from '../plan/standingAt';
import { usesWithin, withUse } from '../plan/useEnds';
import { withReference } from '../plan/withReference';
import { fartherOut } from '../turn/fartherOut';
import { laid, type Beside } from '../turn/laid';
import { replayed, widestDay, type Replay, type Stretch } from '../turn/replay';
import type { PouredSince } from './pouredSince';
import { seasonQuantities, type SeasonId } from './quantity';

/** What is held against what the keeper wants of a replay. */
export interface Passed {
  /** A line that is passed, or passed farther than as the tank runs. */
  readonly line: LineResult | undefined;
  /** A quantity that moves faster than it may, and how far in a day. */
  readonly fast: { readonly id: SeasonId; readonly by: number } | undefined;
  readonly firstH: number;
}

/** A replayed day may be off what is allowed by as little as no kit tells, in shares of it. */
export const UNTOLD = 1.02;
/** Half a year of a tank is some megabytes. */
const MOST_KEPT = 8;
/** As good as no sooner: what drifts is tested once in so many hours at the most. */
const SOONER_H = 48;
export const columnOf = Object.fromEntries(
  seasonQuantities.map(({ id, column }) => [id, column]),
) as Record<SeasonId, (typeof seasonQuantities)[number]['column']>;

/** The water as it stands, with what is poured in by hand day by day, and everything that may be tried with it. */
export class SeasonTank {
  readonly now: Scenario;
  readonly uses: readonly number[];
  private readonly standsAt;
  private readonly alone = new Map<string, Replay>();
  private readonly replays = new Map<string, Replay>();

  /** `turned` is what the keeper is told to do for alkalinity meanwhile, day by day. */
  constructor(
    now: Scenario,
    giveOrTakeDkhPerDay: number,
    private readonly options: SimulationOptions,
    readonly turned: readonly Stretch[] = [],
    readonly poured: readonly PouredSince[] = [],
  ) {
    const known = withReference(now, options);
    this.now = { ...known, faults: [], responses: [] };
    this.uses = [...new Set(usesWithin(this.now.corals.useDkhPerDay, giveOrTakeDkhPerDay))];
    this.standsAt = standingAt(this.now, options);
  }

  /** From the newest water through all stretches, at the use itself or at another. */
  replay(stretches: readonly Stretch[], use = this.uses[0]!): Replay {
    const scenarios = stretches.map((one) => ({ ...one, scenario: withUse(one.scenario, use) }));
    const key = JSON.stringify(scenarios);
    const known = this.replays.get(key);
    if (known) return known;
    const found = replayed(scenarios, this.standsAt(use), this.options);
    this.replays.set(key, found);
    const [oldest] = this.replays.keys();
    if (this.replays.size > MOST_KEPT && oldest !== undefined) this.replays.delete(oldest);
    return found;
  }

  /** What is turned, run as one with what is done beside it; with nothing, the turn alone. */
  turnedWith(beside: Beside, days: number, use: number): Replay {
    const stretches = laid(this.now, this.turned, beside, days);
    if (beside.first ?? beside.then) return this.replay(stretches, use);
    const key = `turned ${days} ${use}`;
    const known = this.alone.get(key);
    if (known) return known;
    const found = this.replay(stretches, use);
    this.alone.set(key, found);
    return found;
  }

  /** The first mornings as they will go: with what is turned meanwhile. */
  withMornings(first: Stretch): Replay {
    if (this.turned.length === 0) return this.replay([first]);
    return this.turnedWith({ first }, first.untilDay, this.uses[0]!);
  }

  /** What passes with what is done beside the turn although the turn alone keeps it. */
  passedBeside(beside: Beside, most: MostPerDay, use: number): Passed[] {
    const days = Math.max(PLAN_DAYS, (beside.first?.untilDay ?? 0) + 1);
    const run = this.turnedWith(beside, days, use);
    return this.passed(run, days, most, use, this.turnedWith({}, days, use));
  }

  /**
   * When alkalinity passes the line of harm, with all that is turned for it, and does not come back;
   * undefined where it is held.
   */
  alkalinityRunsOut(): { readonly day: number; readonly harmDkh: number } | undefined {
    const { dkh, lines } = this.turnedWith({}, PLAN_DAYS, this.uses[0]!);
    const { firstH, limit } = lineOf(lines, 'alkalinityHarm');
    if (firstH === undefined || dkh.at(-1)! >= limit) return undefined;
    return { day: Math.floor(firstH / 24) + 1, harmDkh: limit };
  }

  /**
   * What is out anyway, with the turn alone, and goes farther out with what is done beside it:
   * alkalinity while the mornings last (after them it is tested, and told), all else ever.
   */
  fartherBeside(beside: Beside, use: number): Passed[] {
    const untilDay = beside.first?.untilDay ?? 0;
    const days = Math.max(PLAN_DAYS, untilDay + 1);
    const [run, alone] = [this.turnedWith(beside, days, use), this.turnedWith({}, days, use)];
    return fartherOut(run, alone, untilDay * 24).map((line) => ({
      ...{ line, fast: undefined, firstH: line.firstH! },
    }));
  }

  /** As it runs, with nothing done. */
  leftAlone(days: number, use = this.uses[0]!): Replay {
    const key = `${days} ${use}`;
    const known = this.alone.get(key);
    if (known) return known;
    const found = this.replay([{ scenario: this.now, untilDay: days }], use);
    this.alone.set(key, found);
    return found;
  }

  /** When alkalinity leaves its band as it runs, the use itself taken; undefined where it does not. */
  alkalinityLeavesDay(days: number): number | undefined {
    const { lines } = this.leftAlone(days);
    const firstH = ['alkalinityLow', 'alkalinityHigh'].flatMap(
      (id) => lineOf(lines, id).firstH ?? [],
    );
    return firstH.length === 0 ? undefined : Math.floor(Math.min(...firstH) / 24) + 1;
  }

  band(id: SeasonId): Band {
    return limitBands(this.now.limits).find((band) => band.id === id)!;
  }

  level(id: SeasonId): number {
    const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = this.now.tank;
    return { calcium: calciumMgPerL, magnesium: magnesiumMgPerL, salinity: salinityPractical }[id];
  }

  /**
   * Every line that a replay passes although it is kept, or kept nearer, as it runs; and each of the
   * three that it moves faster in a day than it may. The soonest comes first. What it is held
   * against is the tank left alone, unless it is something else that is done anyway.
   */
  passed(
    replay: Replay,
    days: number,
    most: MostPerDay,
    use: number,
    alone = this.leftAlone(days, use),
  ): Passed[] {
    const lines = replay.lines.flatMap((line): Passed[] => {
      if (stillInside(line, alone.lines) || isUntold(line)) return [];
      const before = lineOf(alone.lines, line.id);
      const wasOut = before.firstH !== undefined;
      const isOwn = seasonQuantities.some(({ id }) => id === line.quantity);
      // What is passed as it runs, too, and no sooner, is none of the season's doing.
      if (!isOwn && wasOut && before.firstH! - line.firstH! <= SOONER_H) return [];
      // Of the three, where it runs no farther, it is passed where it goes farther.
      return [{ line, fast: undefined, firstH: wasOut && isOwn ? line.worstH : line.firstH! }];
    });
    const fast = seasonQuantities.flatMap(({ id, column }): Passed[] => {
      const own = replay.hourly(column);
      const allowed = UNTOLD * Math.max(most[id], widestDay(alone.hourly(column), 0, days * 24));
      const by = widestDay(own, 0, days * 24);
      if (by <= allowed) return [];
      const firstH = firstFaster(own, allowed);
      return [{ line: undefined, fast: { id, by }, firstH }];
    });
    return [...lines, ...fast].toSorted((a, b) => a.firstH - b.firstH);
  }
}

/** Alkalinity once the mornings are over: it is tested and turned again, and told beside. */
export const isTurnedAgain = ({ line, firstH }: Passed, { first }: Beside): boolean =>
  line?.quantity === 'alkalinity' && firstH > (first?.untilDay ?? 0) * 24;

/** Of the three, nobody can tell so little beyond a limit: a share of it. */
export const UNTOLD_SHARE = 0.005;

function isUntold({ quantity, trouble, worst, limit }: LineResult): boolean {
  if (!seasonQuantities.some(({ id }) => id === quantity)) return false;
  return (trouble === 'above' ? worst - limit : limit - worst) <= UNTOLD_SHARE * limit;
}

/** Days by day means of one quantity. */
export const daily = (replay: Replay, id: SeasonId): number[] =>
  dayMeans(replay.hourly(columnOf[id]));

/** Mean of some hours of one quantity; of a run that ended before, where it ended. */
export function meanOf(replay: Replay, id: SeasonId, fromH: number, toH: number): number {
  const all = replay.hourly(columnOf[id]);
  const hours = all.slice(Math.max(0, Math.round(fromH)), Math.round(toH));
  return hours.length === 0
    ? all.at(-1)!
    : hours.reduce((sum, value) => sum + value, 0) / hours.length;
}

/** The first day, counted from 0, whose mean is outside a band; undefined where none is. */
export function leavesOn(means: readonly number[], { low, high }: Band): number | undefined {
  const day = means.findIndex((mean) => mean < low || mean > high);
  return day < 0 ? undefined : day;
}

function firstFaster(hourly: readonly number[], allowed: number): number {
  for (let hour = 24; hour < hourly.length; hour++) {
    if (widestDay(hourly, hour - 24, hour) > allowed) return hour;
  }
  return 0;
}
