import { withNewestWater } from '../../../shared/log/newest';
import type { Reading } from '../../../shared/log/reading';
import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { SeasonTargets } from '../../../shared/recipe/seasonTargets';
import type { Scenario } from '../../../shared/scenario/schema';
import type { SimulationOptions } from '../../engine/simulation';
import type { Stretch } from '../turn/replay';
import { firstAsked } from './firstAsked';
import { firstDays, type First } from './firstDays';
import { loweringsOf, type Lowering } from './lowering';
import { withPoured, type PouredSince } from './pouredSince';
import { SeasonTank } from './seasonTank';
import { weeklyHold } from './weekly';
import type { Weekly } from './weeklyTold';

export interface AheadQuestion {
  /** The tank as it stands, with today's use. */
  readonly now: Scenario;
  /** Everything that has happened: what was read longest ago is still the newest that is known. */
  readonly readings: readonly Reading[];
  readonly giveOrTakeDkhPerDay: number;
  readonly targets: SeasonTargets;
  readonly mostPerDay: MostPerDay;
  /** What the keeper is told to do for alkalinity meanwhile, day by day; nothing where it is left out. */
  readonly turned?: readonly Stretch[];
}

/** What brings calcium, magnesium and salinity back, and what then holds them. */
export interface Ahead {
  /** What was poured in since each was read, and counts. */
  readonly poured: readonly PouredSince[];
  readonly first: First;
  readonly lowerings: readonly Lowering[];
  readonly weekly: Weekly;
}

/** Over months a step may err by more, µmol/kg, and nothing that is told changes. */
const SEASON_TOLERANCE = 0.5;

export const seasonOptions = (given: SimulationOptions): SimulationOptions => ({
  ...given,
  toleranceUmolPerKg: SEASON_TOLERANCE,
});

/** The tank with the newest that is known of the three, as everything of a season begins. */
export function seasonTank(question: AheadQuestion, options: SimulationOptions): SeasonTank {
  const { now, readings, giveOrTakeDkhPerDay, turned } = question;
  const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = withNewestWater(now, readings).tank;
  const known = { calciumMgPerL, magnesiumMgPerL, salinityPractical };
  const read = { ...now, tank: { ...now.tank, ...known } };
  const newest = withPoured(read, readings, options);
  return new SeasonTank(newest.now, giveOrTakeDkhPerDay, options, turned, newest.poured);
}

/** The one answer to "how much of what, for how long", whoever asks: a season, or a turn. */
export function aheadOf(tank: SeasonTank, { targets, mostPerDay }: AheadQuestion): Ahead {
  const first = firstDays(tank, firstAsked(tank, targets, mostPerDay));
  const weekly = weeklyHold(tank, first, targets, mostPerDay);
  return { poured: tank.poured, first, weekly, lowerings: loweringsOf(tank, first, mostPerDay) };
}
