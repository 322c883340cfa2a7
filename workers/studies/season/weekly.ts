import { mean } from 'd3-array';
import type { MostPerDay, SeasonTargets } from '../../../shared/recipe/seasonTargets';
import { mgPerGram } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { oxidisedMeqPerG, type AdditiveId } from '../../../shared/species/additives';
import { toDecimals } from '../../../shared/units/digits';
import type { Replay, Stretch } from '../turn/replay';
import {
  heldSalinity,
  METAL_OF,
  metals,
  pptPerMgPerL,
  salts,
  type First,
  type Metal,
} from './firstDays';
import { seasonQuantities, type SeasonId } from './quantity';
import { daily, meanOf, UNTOLD_SHARE, type Passed, type SeasonTank } from './seasonTank';

export const SEASON_DAYS = 180;

/** The water that is exchanged, L a week, and what it is mixed to. */
export interface Exchange {
  readonly litresPerWeek: number;
  /** One change and how often, where there are any; else all day long. */
  readonly litres: number;
  readonly everyDays: number;
  readonly salinityPractical: number;
  /**
   * Of the week's litres, so many are plain fresh water where the rest is mixed as the plan says;
   * below 0 where it has to be stronger.
   */
  readonly plainLPerWeek: number;
}

/** A quantity that is not held, the first day that it is outside, counted from 1, and on which side. */
export interface Leaves {
  readonly id: SeasonId;
  readonly day: number;
  readonly side: 'above' | 'below';
}

/** Poured each week, in so many parts. */
export interface WeeklyPoured {
  readonly additive: AdditiveId;
  readonly gramsPerWeek: number;
  readonly parts: number;
}

/** What holds the water over a season. */
export interface Weekly {
  /** Nothing has to be turned; or something; or salinity is held by nothing that was tried. */
  readonly kind: 'asIs' | 'turned' | 'cannot';
  readonly exchange: Exchange | undefined;
  /** Poured in a week, in so many parts. */
  readonly poured: Partial<Record<Metal, WeeklyPoured>>;
  /** Share of the bottles' salt of a metal that is left in, where they bring too much. */
  readonly leftIn: Partial<Record<Metal, number>>;
  /** Mean of the season's last week. */
  readonly ends: Readonly<Record<SeasonId, number>>;
  readonly notHeld: readonly Leaves[];
  /** What is held, or would be: calcium is not judged where alkalinity, which it follows, leaves soon. */
  readonly judged: readonly SeasonId[];
  /** Whole days in which what is held stays inside, and nothing else is passed, at every use that is possible. */
  readonly promisedDays: number;
  /** Alkalinity of the last week against that of the tank as it runs, dKH. */
  readonly alkalinityByDkh: number;
  /** What else ends them. */
  readonly passed: Passed | undefined;
  readonly stretches: readonly Stretch[];
}

/** Weekly changes of so many percent are tried where those of the plan do not do. */
const PERCENTS = [5, 10, 20, 30];
/** Nobody mixes new water weaker or stronger for good. */
const MIXED = { least: 20, most: 40 } as const;
const HOUR = 9;
const ROUNDS = 4;
const TRIES = 4;
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
const CLOSE = { calcium: 2, magnesium: 5, salinity: 0.05 } as const;
/** Where alkalinity leaves its band before, what calcium does says nothing of the plan, days. */
const FOLLOWS_DAYS = 90;
/** Shorter than this nothing is held. */
const LEAST_PROMISE_DAYS = 7;
/** Each costs a keeper a second. */
const MOST_TOLD = 3;
/** So long is as good as the season: it is tested before. */
const GOOD_PROMISE_DAYS = 28;
/** The step by which the effect of a bottle's salt is tried. */
const STEP = 0.2;

interface Doses {
  readonly mixedTo: number;
  readonly gramsPerWeek: Readonly<Record<Metal, number>>;
  readonly leftIn: Readonly<Record<Metal, number>>;
}
/** What is turned for a quantity: the new water, what is poured, or what the bottles hold. */
type Turned = ReadonlyMap<SeasonId, 'mix' | 'pour' | 'bottles'>;
type Changes = Scenario['waterChanges'];

const lastWeek = (replay: Replay): Record<SeasonId, number> => {
  const of = (id: SeasonId) => meanOf(replay, id, SEASON_DAYS * 24 - WEEK_H, SEASON_DAYS * 24);
  return { calcium: of('calcium'), magnesium: of('magnesium'), salinity: of('salinity') };
};

const lastDkh = ({ dkh }: Replay): number => mean(dkh.slice(-WEEK_H))!;

/** By then what began outside is on its way in, days. */
const RESTED_DAYS = 30;

/** Half way between a metal's highest and lowest day once at rest: growth is shared out over the season. */
function standsAt(replay: Replay, metal: Metal, fromDay: number): number {
  const means = daily(replay, metal);
  const rested = means.slice(Math.min(fromDay + RESTED_DAYS, means.length - 1));
  return (Math.max(...rested) + Math.min(...rested)) / 2;
}

/** Whether a salt brings a metal and no alkalinity. */
export const bringsOnly = (additive: AdditiveId, metal: Metal): boolean =>
  mgPerGram(additive, METAL_OF[metal]) > 0 && oxidisedMeqPerG(additive) === 0;

/** Whether the bottles bring a metal beside alkalinity. */
export const bottlesBring = ({ dosers }: Scenario, metal: Metal): boolean =>
  dosers.some(
    ({ recipe, mlPerDay }) =>
      mlPerDay > 0 && recipe.some(({ additive }) => bringsOnly(additive, metal)),
  );

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

const perWeekOf = ({ percent, everyDays, continuousLPerDay }: Changes, volumeL: number): number =>
  (percent * 7) / everyDays / 100 + (continuousLPerDay * 7) / volumeL;

/** What keeps salinity, calcium and magnesium inside their bands once the first days are done. */
export function weeklyHold(
  tank: SeasonTank,
  first: First,
  targets: SeasonTargets,
  mostPerDay: MostPerDay,
): Weekly {
  const { now } = tank;
  const { volumeL } = now.tank;
  const before: readonly Stretch[] = first.kind === 'first' ? [first.stretch] : [];
  const fromDay = before[0]?.untilDay ?? 0;
  const weeks = (SEASON_DAYS - fromDay) / 7;
  const own = now.waterChanges;
  const aim: Record<SeasonId, number> = {
    calcium: aimed('calcium'),
    magnesium: aimed('magnesium'),
    salinity: heldSalinity(tank),
  };
  const plain: Doses = {
    mixedTo: own.salinityPractical,
    gramsPerWeek: { calcium: 0, magnesium: 0 },
    leftIn: { calcium: 1, magnesium: 1 },
  };
  // The morning after a weekly change, so that no day is moved by both.
  const pourFrom = 7 * Math.ceil((fromDay + 1) / 7) + 1;
  const alkalinityDay = tank.alkalinityLeavesDay(SEASON_DAYS) ?? Infinity;
  const judged = seasonQuantities
    .map(({ id }) => id)
    .filter((id) => id !== 'calcium' || alkalinityDay > FOLLOWS_DAYS);
  const asItGoes = tank.replay(stretchesWith(own, plain));
  const goesOut = outOf(asItGoes);
  if (goesOut.length === 0) return told('asIs', own, plain, []);
  const weekly = PERCENTS.filter((percent) => percent / 100 > perWeekOf(own, volumeL)).map(
    (percent): Changes => ({ ...own, percent, everyDays: 7, continuousLPerDay: 0 }),
  );
  let best: Weekly | undefined;
  let tries = 0;
  for (let todo: Changes[] = [own, ...weekly]; todo.length > 0 && tries < MOST_TOLD;) {
    const [changes, ...others] = todo as [Changes, ...Changes[]];
    todo = others;
    const found = tried(changes);
    if (!found) continue;
    tries++;
    if (found.promisedDays >= GOOD_PROMISE_DAYS) return found;
    if (found.promisedDays > (best?.promisedDays ?? -1)) best = found;
    // What the use is not known well enough for, no other water holds.
    if (!found.passed || found.passed.firstH > (found.promisedDays + 1) * 24) break;
    // Half as much twice as often moves a day half as far.
    const { percent, everyDays } = changes;
    if (everyDays === 7) todo = [{ ...changes, percent: percent / 2, everyDays: 3.5 }, ...others];
  }
  const asGood = told('cannot', own, plain, goesOut);
  if (!best || best.promisedDays < Math.min(LEAST_PROMISE_DAYS, asGood.promisedDays)) {
    return { ...asGood, passed: best?.passed };
  }
  return best;

  function tried(changes: Changes): Weekly | undefined {
    const doses = solved(changes);
    if (!doses) return undefined;
    const out = outOf(tank.replay(stretchesWith(changes, doses)));
    const holds = out.every(({ id }) => id !== 'salinity');
    return holds ? told(doses === plain ? 'asIs' : 'turned', changes, doses, out) : undefined;
  }

  /** Where the first days end, what stands inside its band is held, and what stands outside is led in. */
  function aimed(metal: Metal): number {
    const level = first.kind === 'first' ? first.ends[metal] : tank.level(metal);
    const { low, high } = tank.band(metal);
    return level >= low && level <= high ? level : targets[metal];
  }

  function stretchesWith(changes: Changes, { mixedTo, gramsPerWeek, leftIn }: Doses): Stretch[] {
    const additions = metals.flatMap((metal) => {
      const grams = gramsPerWeek[metal];
      if (grams <= 0) return [];
      const parts = partsOf(metal, grams);
      return Array.from({ length: Math.ceil(weeks) }, (_, week) => week).flatMap((week) =>
        WEEKDAYS[parts]!.map((weekday) => ({
          ...{ day: pourFrom + week * 7 + weekday, hour: HOUR },
          ...{ additive: salts[metal][0]!, grams: grams / parts },
        })),
      );
    });
    const scenario = {
      ...now,
      ...{ days: SEASON_DAYS, additions, dosers: withLeftIn(now.dosers, leftIn) },
      waterChanges: { ...changes, salinityPractical: mixedTo },
    };
    return [...before, { scenario, untilDay: SEASON_DAYS }];
  }

  /** As few parts as keep the day's limit, or one every day. */
  function partsOf(metal: Metal, gramsPerWeek: number): number {
    const risesMgPerL = (gramsPerWeek * mgPerGram(salts[metal][0]!, METAL_OF[metal])) / volumeL;
    const counts = Object.keys(WEEKDAYS).map(Number);
    return counts.find((count) => risesMgPerL / count <= SPARE * mostPerDay[metal]) ?? DAILY;
  }

  /** Everything that is outside its band, from where the first days end; what begins outside is on its way. */
  function outOf(replay: Replay): Leaves[] {
    return judged.flatMap((id): Leaves[] => {
      const { low, high } = tank.band(id);
      const means = daily(replay, id);
      const isIn = (mean: number) =>
        mean >= low * (1 - UNTOLD_SHARE) && mean <= high * (1 + UNTOLD_SHARE);
      const begins = means.findIndex((mean, day) => day >= fromDay && isIn(mean));
      const from = begins < 0 ? Math.min(fromDay, means.length - 1) : begins;
      const day = means.findIndex((mean, i) => i >= from && !isIn(mean));
      return day < 0 ? [] : [{ id, day: day + 1, side: means[day]! > high ? 'above' : 'below' }];
    });
  }

  /** What has to be turned, and how far; undefined where salinity is beyond what such changes can do. */
  function solved(changes: Changes): Doses | undefined {
    let doses: Doses | undefined = plain;
    let turned: Turned = new Map();
    for (let round = 0; round < ROUNDS && doses; round++) {
      const replay = tank.replay(stretchesWith(changes, doses));
      const more = outOf(replay).flatMap(
        ({ id, side }): [SeasonId, 'mix' | 'pour' | 'bottles'][] => {
          if (turned.has(id)) return [];
          if (id === 'salinity') return [[id, 'mix']];
          if (side === 'below') return [[id, 'pour']];
          return bottlesBring(now, id) ? [[id, 'bottles']] : [];
        },
      );
      if (more.length === 0) break;
      turned = new Map([...turned, ...more]);
      doses = towards(changes, doses, turned);
    }
    return doses;
  }

  /** Solved on the engine, until it stands where it is aimed at. */
  function towards(changes: Changes, from: Doses, turned: Turned): Doses | undefined {
    const perWeek = perWeekOf(changes, volumeL);
    const exchanged = 1 - Math.exp(-perWeek * weeks);
    if (turned.has('salinity') && exchanged === 0) return undefined;
    // Weeks whose pouring is still there at the end.
    const kept = perWeek > 0 ? exchanged / perWeek : weeks;
    const perShare = new Map<Metal, number>();
    const endsWith = (doses: Doses): Record<SeasonId, number> => {
      const replay = tank.replay(stretchesWith(changes, doses));
      const at = (metal: Metal) => standsAt(replay, metal, fromDay);
      const { salinity } = lastWeek(replay);
      return { calcium: at('calcium'), magnesium: at('magnesium'), salinity };
    };
    let doses = from;
    for (let i = 0; i < TRIES; i++) {
      const ends = endsWith(doses);
      const off = (id: SeasonId) => (turned.has(id) ? aim[id] - ends[id] : 0);
      if (seasonQuantities.every(({ id }) => Math.abs(off(id)) <= CLOSE[id])) break;
      const poured = (metal: Metal): number => {
        if (turned.get(metal) !== 'pour') return doses.gramsPerWeek[metal];
        const perGram = mgPerGram(salts[metal][0]!, METAL_OF[metal]);
        const more = (off(metal) * volumeL) / perGram / kept;
        return threeFigures(Math.max(0, doses.gramsPerWeek[metal] + more));
      };
      const left = (metal: Metal): number => {
        const share = doses.leftIn[metal];
        if (turned.get(metal) !== 'bottles') return share;
        const less = { ...doses, leftIn: { ...doses.leftIn, [metal]: share - STEP } };
        const slope = perShare.get(metal) ?? (ends[metal] - endsWith(less)[metal]) / STEP;
        perShare.set(metal, slope);
        return slope > 0 ? toDecimals(Math.max(0, share + off(metal) / slope), 2) : share;
      };
      const brought = metals.reduce((ppt, id) => ppt + off(id) * pptPerMgPerL(id), 0);
      const salinity = off('salinity') - brought;
      const mixedTo = doses.mixedTo + (turned.has('salinity') ? salinity / exchanged : 0);
      doses = {
        mixedTo: turned.has('salinity') ? toDecimals(mixedTo, 1) : mixedTo,
        gramsPerWeek: { calcium: poured('calcium'), magnesium: poured('magnesium') },
        leftIn: { calcium: left('calcium'), magnesium: left('magnesium') },
      };
      if (doses.mixedTo < MIXED.least || doses.mixedTo > MIXED.most) return undefined;
    }
    return doses;
  }

  function told(
    kind: Weekly['kind'],
    changes: Changes,
    doses: Doses,
    notHeld: readonly Leaves[],
  ): Weekly {
    const { mixedTo, gramsPerWeek, leftIn } = doses;
    const stretches = stretchesWith(changes, doses);
    const litresPerWeek = perWeekOf(changes, volumeL) * volumeL;
    const poured: Weekly['poured'] = {};
    const left: Weekly['leftIn'] = {};
    for (const metal of metals) {
      const grams = gramsPerWeek[metal];
      if (grams > 0) {
        const additive = salts[metal][0]!;
        poured[metal] = { additive, gramsPerWeek: grams, parts: partsOf(metal, grams) };
      }
      if (leftIn[metal] < 1) left[metal] = leftIn[metal];
    }
    const isHeld = (id: string) =>
      notHeld.every((leaves) => leaves.id !== id) &&
      (id !== 'calcium' || judged.includes('calcium'));
    const runs = tank.uses.map((use) => ({ use, replay: tank.replay(stretches, use) }));
    const passed = runs
      .flatMap(({ use, replay }) => tank.passed(replay, SEASON_DAYS, mostPerDay, use))
      // Alkalinity is tested and turned all season: where it goes is told beside.
      .filter(
        ({ line, fast }) => line?.quantity !== 'alkalinity' && isHeld(line?.quantity ?? fast!.id),
      )
      .toSorted((a, b) => a.firstH - b.firstH)[0];
    const outDays = runs.flatMap(({ replay }) =>
      outOf(replay).flatMap(({ id, day }) => (isHeld(id) ? [day - 1] : [])),
    );
    const passedDay = Math.floor((passed?.firstH ?? Infinity) / 24);
    return {
      ...{ kind, poured, passed, stretches, notHeld, judged, leftIn: left },
      exchange:
        litresPerWeek > 0
          ? {
              ...{ litresPerWeek, litres: (changes.percent / 100) * volumeL },
              ...{ everyDays: changes.everyDays, salinityPractical: mixedTo },
              plainLPerWeek: litresPerWeek * (1 - mixedTo / own.salinityPractical),
            }
          : undefined,
      ends: lastWeek(runs[0]!.replay),
      alkalinityByDkh: lastDkh(runs[0]!.replay) - lastDkh(tank.leftAlone(SEASON_DAYS)),
      promisedDays: Math.min(SEASON_DAYS, passedDay, ...outDays),
    };
  }
}
