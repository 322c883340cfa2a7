import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { ended, stateAfter } from '../../engine/run';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { delivery } from '../fit/doubts';
import { changesMeanwhile } from '../turn/laid';
import { aheadOf, seasonOptions, seasonTank, type Ahead, type AheadQuestion } from './ahead';
import { firstAsked } from './firstAsked';
import { firstDays, type First } from './firstDays';
import { metals } from './metals';
import { seasonQuantities, type SeasonId } from './quantity';
import { daily, leavesOn, type SeasonTank } from './seasonTank';
import { sharesOf, type Share } from './share';
import type { Weekly } from './weeklyTold';
import { SEASON_DAYS } from './weeks';
import { whyMoved, type Why, type WhyQuestion } from './why';

export interface SeasonQuestion extends WhyQuestion, AheadQuestion {
  readonly readings: readonly Reading[];
}

/** Where a quantity goes in a season if the tank runs as it does. */
export interface Drift {
  readonly id: SeasonId;
  readonly now: number;
  /** After 90 and 180 days. */
  readonly after: readonly [number, number];
  /** If the pumps give a tenth more or less than they are set to: one σ, common practice. */
  readonly giveOrTake: number;
  readonly shares: readonly Share[];
  /** First day outside the band; undefined where it stays. */
  readonly leavesDay: number | undefined;
}

/** A season looked back over, and the next one. */
export interface Season extends Ahead {
  readonly why: Why;
  readonly drifts: readonly Drift[];
  /** Day on which alkalinity leaves the band as it runs: that is turned first. */
  readonly alkalinityLeavesDay: number | undefined;
  /** What is poured first, with the other salt of each metal, where anything is poured. */
  readonly instead: First | undefined;
  /** The tank as it stands with all of it, as one plan. */
  readonly trial: Scenario;
}

const OTHER_SALT = 1;
/** A plan holds no more. */
const MOST_ADDITIONS = 200;

/**
 * Why calcium, magnesium and salinity moved since the first readings; what to add; and what the plan
 * in force brings in a season, with the water that holds it. Every number was run by the engine, from
 * the newest water.
 */
export function season(question: SeasonQuestion, given: SimulationOptions = usualOptions): Season {
  const options = seasonOptions(given);
  const { targets, mostPerDay } = question;
  const why = whyMoved(question, options);
  const tank = seasonTank(question, options);
  const ahead = aheadOf(tank, question);
  const { first, weekly } = ahead;
  const poursAny = first.kind === 'first' && metals.some((metal) => first.poured[metal]);
  const instead = poursAny
    ? firstDays(tank, firstAsked(tank, targets, mostPerDay, OTHER_SALT))
    : undefined;
  return {
    ...{ ...ahead, why, instead, drifts: driftsOf(tank, options) },
    alkalinityLeavesDay: tank.alkalinityLeavesDay(SEASON_DAYS),
    trial: trialOf(tank.now, first, weekly),
  };
}

/** What the plan in force brings and takes in a season, by the engine's own accounts. */
function driftsOf(tank: SeasonTank, options: SimulationOptions): Drift[] {
  const { now } = tank;
  const goes = { ...now, days: SEASON_DAYS };
  const before = stateAfter({ ...now, days: 0 }, options);
  const trial = ended(goes, options, before);
  const { accounts, stopped } = trial.result();
  const alone = tank.leftAlone(SEASON_DAYS);
  const more = tank.replay([
    { scenario: delivery.more(goes, delivery.sigma), untilDay: SEASON_DAYS },
  ]);
  return seasonQuantities.map((quantity): Drift => {
    const { id, column } = quantity;
    const values = alone.hourly(column);
    const means = daily(alone, id);
    const at = (day: number) => means[Math.min(means.length, day) - 1] ?? values.at(-1)!;
    const ends = (hourly: readonly number[]) => hourly.at(-1)!;
    const cut = stopped
      ? []
      : [
          {
            before: before.vessels[0]!.amounts,
            after: trial.state().vessels[0]!.amounts,
            accounts,
          },
        ];
    const leaves = leavesOn(means, tank.band(id));
    return {
      ...{ id, now: tank.level(id), after: [at(SEASON_DAYS / 2), at(SEASON_DAYS)] },
      giveOrTake: Math.abs(ends(more.hourly(column)) - ends(values)),
      shares: cut.length === 0 ? [] : sharesOf(quantity, cut, values[0]!, ends(values)),
      leavesDay: leaves === undefined ? undefined : leaves + 1,
    };
  });
}

/** All of it as one plan, as long as a plan can hold what is poured. */
function trialOf(now: Scenario, first: First, { stretches, kind }: Weekly): Scenario {
  const last = kind === 'cannot' ? { ...now, days: SEASON_DAYS } : stretches.at(-1)!.scenario;
  if (first.kind === 'first' && changesMeanwhile(first.stretch, last)) {
    return { ...first.stretch.scenario };
  }
  const poured = first.kind === 'first' ? first.stretch.scenario.additions : [];
  const all = [...new Set([...poured, ...last.additions])].toSorted((a, b) => a.day - b.day);
  const additions = all.slice(0, MOST_ADDITIONS);
  const beyond = all[MOST_ADDITIONS];
  return { ...last, additions, days: beyond ? beyond.day - 1 : SEASON_DAYS };
}
