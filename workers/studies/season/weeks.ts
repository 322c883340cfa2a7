import { mean } from 'd3-array';
import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { SeasonTargets } from '../../../shared/recipe/seasonTargets';
import { mgPerGram } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { bringsAlkalinity, type AdditiveId } from '../../../shared/species/additives';
import type { Replay, Stretch } from '../turn/replay';
import { heldSalinity } from './firstAsked';
import { METAL_OF, metals, salts, type Metal } from './metals';
import { type First } from './firstDays';
import { seasonQuantities, type SeasonId } from './quantity';
import { MORNING_HOUR } from '../plan/firstMorning';
import { daily, meanOf, UNTOLD_SHARE, type SeasonTank } from './seasonTank';

export const SEASON_DAYS = 180;

/** A quantity that is not held, the first day that it is outside, counted from 1, and on which side. */
export interface Leaves {
  readonly id: SeasonId;
  readonly day: number;
  readonly side: 'above' | 'below';
}

/** What the new water is mixed to, what is poured in a week, and what share of a metal's salt the bottles keep. */
export interface Doses {
  readonly mixedTo: number;
  readonly gramsPerWeek: Readonly<Record<Metal, number>>;
  readonly leftIn: Readonly<Record<Metal, number>>;
}

export type Changes = Scenario['waterChanges'];

const WEEK_H = 7 * 24;
/** On which days of a week the parts are poured. */
const WEEKDAYS: Readonly<Record<number, readonly number[]>> = {
  1: [0],
  2: [0, 3],
  3: [0, 2, 4],
  7: [0, 1, 2, 3, 4, 5, 6],
};
const DAILY = 7;
const SPARE = 0.9;
/** Where alkalinity leaves its band before, what calcium does says nothing of the plan, days. */
const FOLLOWS_DAYS = 90;
/** By then what began outside is on its way in, days. */
const RESTED_DAYS = 30;

export const lastWeek = (replay: Replay): Record<SeasonId, number> => {
  const of = (id: SeasonId) => meanOf(replay, id, SEASON_DAYS * 24 - WEEK_H, SEASON_DAYS * 24);
  return { calcium: of('calcium'), magnesium: of('magnesium'), salinity: of('salinity') };
};

export const lastDkh = ({ dkh }: Replay): number => mean(dkh.slice(-WEEK_H))!;

/** Share of the tank's water that is exchanged in a week. */
export const perWeekOf = (
  { percent, everyDays, continuousLPerDay }: Changes,
  volumeL: number,
): number => (percent * 7) / everyDays / 100 + (continuousLPerDay * 7) / volumeL;

/** Whether a salt brings a metal and no alkalinity. */
export const bringsOnly = (additive: AdditiveId, metal: Metal): boolean =>
  mgPerGram(additive, METAL_OF[metal]) > 0 && !bringsAlkalinity(additive);

/** The bottles with a share of their salt of each metal. */
function withLeftIn(dosers: Scenario['dosers'], leftIn: Doses['leftIn']): Scenario['dosers'] {
  return dosers.map((doser) => ({
    ...doser,
    recipe: doser.recipe.map((part) => {
      const metal = metals.find((one) => bringsOnly(part.additive, one));
      const share = metal ? leftIn[metal] : 1;
      return share === 1 ? part : { ...part, gramsPerL: threeFigures(part.gramsPerL * share) };
    }),
  }));
}

/** The weeks of a season after its first days: what is aimed at, what is judged, and a tank with doses in it. */
export class Weeks {
  /** The day on which they begin. */
  readonly fromDay: number;
  readonly count: number;
  readonly aim: Readonly<Record<SeasonId, number>>;
  /** Calcium is not judged where alkalinity, which it follows, leaves soon. */
  readonly judged: readonly SeasonId[];
  /** Nothing turned. */
  readonly plain: Doses;
  private readonly before: readonly Stretch[];

  constructor(
    readonly tank: SeasonTank,
    private readonly first: First,
    private readonly targets: SeasonTargets,
    readonly mostPerDay: MostPerDay,
  ) {
    this.before = first.kind === 'first' ? [first.stretch] : [];
    this.fromDay = this.before[0]?.untilDay ?? 0;
    this.count = (SEASON_DAYS - this.fromDay) / 7;
    this.aim = {
      calcium: this.aimed('calcium'),
      magnesium: this.aimed('magnesium'),
      salinity: heldSalinity(tank),
    };
    const alkalinityDay = tank.alkalinityLeavesDay(SEASON_DAYS) ?? Infinity;
    this.judged = seasonQuantities
      .map(({ id }) => id)
      .filter((id) => id !== 'calcium' || alkalinityDay > FOLLOWS_DAYS);
    this.plain = {
      mixedTo: tank.now.waterChanges.salinityPractical,
      gramsPerWeek: { calcium: 0, magnesium: 0 },
      leftIn: { calcium: 1, magnesium: 1 },
    };
  }

  get volumeL(): number {
    return this.tank.now.tank.volumeL;
  }

  /** The first days, then the season with such changes and doses. */
  stretches(changes: Changes, { mixedTo, gramsPerWeek, leftIn }: Doses): Stretch[] {
    // The morning after a weekly change, so that no day is moved by both.
    const pourFrom = 7 * Math.ceil((this.fromDay + 1) / 7) + 1;
    const additions = metals.flatMap((metal) => {
      const grams = gramsPerWeek[metal];
      if (grams <= 0) return [];
      const parts = this.partsOf(metal, grams);
      return Array.from({ length: Math.ceil(this.count) }, (_, week) => week).flatMap((week) =>
        WEEKDAYS[parts]!.map((weekday) => ({
          ...{ day: pourFrom + week * 7 + weekday, hour: MORNING_HOUR },
          ...{ additive: salts[metal][0]!, grams: grams / parts },
        })),
      );
    });
    const { now } = this.tank;
    const scenario = {
      ...now,
      ...{ days: SEASON_DAYS, additions: [...now.additions, ...additions] },
      ...{ dosers: withLeftIn(now.dosers, leftIn) },
      waterChanges: { ...changes, salinityPractical: mixedTo },
    };
    return [...this.before, { scenario, untilDay: SEASON_DAYS }];
  }

  /** As few parts as keep the day's limit, or one every day. */
  partsOf(metal: Metal, gramsPerWeek: number): number {
    const perGram = mgPerGram(salts[metal][0]!, METAL_OF[metal]);
    const risesMgPerL = (gramsPerWeek * perGram) / this.volumeL;
    const counts = Object.keys(WEEKDAYS).map(Number);
    return counts.find((count) => risesMgPerL / count <= SPARE * this.mostPerDay[metal]) ?? DAILY;
  }

  /** Everything that is outside its band, from where the first days end; what begins outside is on its way. */
  outOf(replay: Replay): Leaves[] {
    return this.judged.flatMap((id): Leaves[] => {
      const { low, high } = this.tank.band(id);
      const means = daily(replay, id);
      const isIn = (level: number) =>
        level >= low * (1 - UNTOLD_SHARE) && level <= high * (1 + UNTOLD_SHARE);
      const begins = means.findIndex((level, day) => day >= this.fromDay && isIn(level));
      const from = begins < 0 ? Math.min(this.fromDay, means.length - 1) : begins;
      const day = means.findIndex((level, i) => i >= from && !isIn(level));
      return day < 0 ? [] : [{ id, day: day + 1, side: means[day]! > high ? 'above' : 'below' }];
    });
  }

  /** Half way between a metal's highest and lowest day once at rest: growth is shared out over the season. */
  standsAt(replay: Replay, metal: Metal): number {
    const means = daily(replay, metal);
    const rested = means.slice(Math.min(this.fromDay + RESTED_DAYS, means.length - 1));
    return (Math.max(...rested) + Math.min(...rested)) / 2;
  }

  /** Where the first days end, what stands inside its band is held, and what stands outside is led in. */
  private aimed(metal: Metal): number {
    const { first, tank } = this;
    const level = first.kind === 'first' ? first.ends[metal] : tank.level(metal);
    const { low, high } = tank.band(metal);
    return level >= low && level <= high ? level : this.targets[metal];
  }
}
