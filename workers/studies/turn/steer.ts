import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import { readingsOf, seasonQuantities, type SeasonId } from '../season/quantity';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import {
  aheadOf,
  seasonOptions,
  seasonTank,
  type Ahead,
  type AheadQuestion,
} from '../season/ahead';
import { loweredBy, type Lowering } from '../season/lowering';
import type { Metal } from '../season/metals';
import { daily, leavesOn, type SeasonTank } from '../season/seasonTank';
import { SEASON_DAYS } from '../season/weeks';
import { PLAN_DAYS } from '../plan/holding';
import { together, type Together } from './together';

/** One of the three that is outside the keeper's band, or on its way out. */
export interface Wanting {
  readonly id: SeasonId;
  readonly level: number;
  readonly side: 'above' | 'below';
  readonly limit: number;
  /** As the tank runs; 0 where it is outside already. */
  readonly leavesDay: number;
}

/** What is too high, and those of the season's ways that hold beside the turn. */
export interface LoweringBeside extends Lowering {
  readonly seasonHasWays: boolean;
}

/** What a turn of alkalinity leaves to be done for calcium, magnesium and salinity. */
export interface Steered extends Ahead {
  readonly lowerings: readonly LoweringBeside[];
  /** Empty where all that was read stays inside as the tank runs: then nothing is offered. */
  readonly wanting: readonly Wanting[];
  /** Undefined where nothing is poured or changed first. */
  readonly together: Together | undefined;
}

/** So far ahead a turn looks, days. */
export const STEER_DAYS = PLAN_DAYS;

/** Which of those that were ever read are outside, or leave while a turn is looked ahead. */
function wantingOf(tank: SeasonTank, { readings }: AheadQuestion): Wanting[] {
  const alone = tank.leftAlone(SEASON_DAYS);
  return seasonQuantities.flatMap((quantity): Wanting[] => {
    const { id } = quantity;
    if (readingsOf(quantity, readings).length === 0) return [];
    const band = tank.band(id);
    const level = tank.level(id);
    const told = (value: number, leavesDay: number): Wanting[] => {
      const side = value > band.high ? 'above' : 'below';
      const limit = side === 'above' ? band.high : band.low;
      return [{ id, level, side, limit, leavesDay }];
    };
    if (level < band.low || level > band.high) return told(level, 0);
    const means = daily(alone, id);
    const day = leavesOn(means, band);
    return day === undefined || day >= STEER_DAYS ? [] : told(means[day]!, day + 1);
  });
}

/** Days that nobody counts: a kit's doubt of the level makes more, and a tenth of a long way. */
const laterDays = (days: number) => Math.ceil(days * 1.1) + 2;

/** Whether what is too high is back inside as the season says although alkalinity is turned meanwhile. */
function fallsAsSaid(
  tank: SeasonTank,
  { first }: Pick<Ahead, 'first'>,
  { id, way }: { readonly id: Metal; readonly way: Lowering['ways'][number] },
  mostPerDay: MostPerDay,
): boolean {
  if (tank.turned.length === 0) return true;
  const days = laterDays(way.days);
  const poured = first.kind === 'first' ? first.stretch : undefined;
  const beside = { first: poured, then: loweredBy(tank.now, id, way) };
  const [use] = tank.uses;
  const run = tank.turnedWith(beside, days, use!);
  const { high } = tank.band(id);
  const day = daily(run, id).findIndex((mean) => mean <= high);
  const without = tank.turnedWith({}, days, use!);
  const [passed] = tank.passed(run, days, mostPerDay, use!, without);
  return day >= 0 && !(passed && passed.firstH < day * 24);
}

/**
 * What brings calcium, magnesium and salinity back beside a turn of alkalinity: the season's own
 * answer, run once more as one with the turn. Undefined where all that was read stays inside.
 */
export function steer(
  question: AheadQuestion,
  given: SimulationOptions = usualOptions,
): Steered | undefined {
  const tank = seasonTank(question, seasonOptions(given));
  const wanting = wantingOf(tank, question);
  if (wanting.length === 0) return undefined;
  const ahead = aheadOf(tank, question);
  const found = together(tank, ahead, question.mostPerDay);
  const lowerings = ahead.lowerings.map((lowering) => ({
    ...lowering,
    ways: lowering.ways.filter((way) =>
      fallsAsSaid(tank, ahead, { id: lowering.id, way }, question.mostPerDay),
    ),
    seasonHasWays: lowering.ways.length > 0,
  }));
  return { ...ahead, wanting, lowerings, together: found };
}
