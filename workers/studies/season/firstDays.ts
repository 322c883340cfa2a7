import type { MostPerDay, SeasonTargets } from '../../../shared/recipe/seasonTargets';
import { gramsForMgPerL, mgPerGram } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { dissolve, type AdditiveId } from '../../../shared/species/additives';
import { saltKg } from '../../../shared/species/block';
import { SALT_G_PER_KG_PER_PSU } from '../../../shared/water/referenceSeawater';
import { toDecimals } from '../../../shared/units/digits';
import type { Replay, Stretch } from '../turn/replay';
import type { SeasonId } from './quantity';
import { seasonQuantities } from './quantity';
import { meanOf, type Passed, type SeasonTank } from './seasonTank';

export type Metal = 'calcium' | 'magnesium';
export const metals: readonly Metal[] = ['calcium', 'magnesium'];
export const METAL_OF = { calcium: 'Ca', magnesium: 'Mg' } as const;

/** What raises them without alkalinity; the first of each is offered, the second told beside it. */
export const salts: Readonly<Record<Metal, readonly AdditiveId[]>> = {
  calcium: ['calciumChlorideDihydrate', 'calciumChloride'],
  magnesium: ['magnesiumChlorideHexahydrate', 'magnesiumSulfateHeptahydrate'],
};

/** A weighed amount each morning. */
export interface Poured {
  readonly additive: AdditiveId;
  readonly gramsPerDay: number;
}

/** A water change each day, with the keeper's mix at another salinity. */
export interface DailyChange {
  readonly percent: number;
  readonly litres: number;
  readonly salinityPractical: number;
}

/** How the water gets to where the keeper wants it. */
export type First =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'first';
      readonly days: number;
      /** Of the way to the targets: less than 1 where all of it at once would pass a limit. */
      readonly share: number;
      readonly poured: Partial<Record<Metal, Poured>>;
      readonly change: DailyChange | undefined;
      /** Mean of the day after the last morning. */
      readonly ends: Readonly<Record<SeasonId, number>>;
      readonly stretch: Stretch;
    }
  /** Nothing tried keeps what is watched: what is passed first, at the slowest of all. */
  | { readonly kind: 'refused'; readonly passed: Passed }
  /** Not within weeks, with new water as weak or as strong as anybody mixes it. */
  | { readonly kind: 'outOfReach' };

/** Where the keeper is to get, with what. */
export interface FirstAsked {
  /** Undefined where nothing has to be raised. */
  readonly raise: Partial<Record<Metal, { readonly to: number; readonly additive: AdditiveId }>>;
  /** Undefined where salinity may stay. */
  readonly salinityTo: number | undefined;
  readonly mostPerDay: MostPerDay;
}

/** A daily limit is kept with a tenth to spare. */
const SPARE = 0.9;
const MOST_DAYS = 30;
const LONGER = 1.5;
/** The morning hour of a hand-poured dose. */
const HOUR = 9;
const CHANGE_HOUR = 10;
const PERCENTS = [2, 5, 10];
/** Nobody mixes new water weaker or stronger. */
const MIXED = { least: 20, most: 42 } as const;
const TRIES = 4;
const CLOSE = { calcium: 1, magnesium: 3, salinity: 0.1 } as const;

/**
 * Which of the three a keeper of these targets has to raise, and whether salinity has to be moved;
 * `which` salt of each metal, counted from 0.
 */
export function firstAsked(
  tank: SeasonTank,
  targets: SeasonTargets,
  mostPerDay: MostPerDay,
  which = 0,
): FirstAsked {
  const raise: FirstAsked['raise'] = {};
  for (const metal of metals) {
    const { kitSigma } = seasonQuantities.find(({ id }) => id === metal)!;
    // Nearer than a kit can tell is there.
    if (targets[metal] - tank.level(metal) <= kitSigma) continue;
    raise[metal] = { to: targets[metal], additive: salts[metal][which]! };
  }
  const { low, high } = tank.band('salinity');
  const salinity = tank.level('salinity');
  return {
    raise,
    // Not farther in than needs be: all that is dissolved goes with it.
    salinityTo: salinity < low || salinity > high ? heldSalinity(tank) : undefined,
    mostPerDay,
  };
}

interface Doses {
  readonly grams: Readonly<Record<Metal, number>>;
  readonly mixedTo: number;
}

/** Part of the way is tried where all of it is not possible. */
const SHARES = [1, 0.6, 0.3];

/** All of the way to the targets, or as much of it as passes no limit at any use that is possible. */
export function firstDays(tank: SeasonTank, asked: FirstAsked): First {
  let all: First | undefined;
  for (const share of SHARES) {
    const found = wholeWay(tank, partOf(tank, asked, share), share);
    if (found.kind === 'none' || found.kind === 'first') return found;
    all ??= found;
  }
  return all!;
}

function partOf(tank: SeasonTank, asked: FirstAsked, share: number): FirstAsked {
  const towards = (from: number, to: number) => from + share * (to - from);
  const raise: FirstAsked['raise'] = {};
  for (const metal of metals) {
    const one = asked.raise[metal];
    if (one) raise[metal] = { ...one, to: towards(tank.level(metal), one.to) };
  }
  const { salinityTo } = asked;
  return {
    ...asked,
    raise,
    salinityTo: salinityTo === undefined ? undefined : towards(tank.level('salinity'), salinityTo),
  };
}

/** The fewest mornings after which all stand where they are wanted. */
function wholeWay(tank: SeasonTank, asked: FirstAsked, share: number): First {
  const { raise, salinityTo, mostPerDay } = asked;
  const { now } = tank;
  const { volumeL } = now.tank;
  const firstDay = now.start.clockHour <= HOUR ? 1 : 2;
  if (metals.every((metal) => !raise[metal]) && salinityTo === undefined) return { kind: 'none' };
  const gap = (id: SeasonId) =>
    Math.abs(
      (id === 'salinity' ? (salinityTo ?? tank.level(id)) : (raise[id]?.to ?? tank.level(id))) -
        tank.level(id),
    );
  const fewest = Math.max(
    1,
    ...seasonQuantities.map(({ id }) => Math.ceil(gap(id) / (SPARE * mostPerDay[id]))),
  );
  let refused: Passed | undefined;
  for (let days = fewest; days <= MOST_DAYS; days = Math.max(days + 1, Math.round(days * LONGER))) {
    for (const percent of salinityTo === undefined ? [0, ...PERCENTS] : PERCENTS) {
      // Beside what is poured, changes of water help where salinity stands in the way.
      const helps = salinityTo !== undefined || (refused && isOfSalinity(refused));
      if (percent > 0 && !helps) break;
      const found = tried(percent, days);
      if (found?.kind === 'first') return found;
      refused = found?.passed ?? refused;
    }
  }
  return refused ? { kind: 'refused', passed: refused } : { kind: 'outOfReach' };

  function scenarioWith(percent: number, days: number, { grams, mixedTo }: Doses): Stretch {
    const additions = Array.from({ length: days }, (_, i) => i + firstDay).flatMap((day) =>
      metals.flatMap((metal) => {
        const one = raise[metal];
        return one && grams[metal] > 0
          ? [{ day, hour: HOUR, additive: one.additive, grams: grams[metal] }]
          : [];
      }),
    );
    const { waterChanges } = now;
    const changed: Scenario['waterChanges'] =
      percent === 0
        ? waterChanges
        : { ...waterChanges, percent, everyDays: 1, hour: CHANGE_HOUR, salinityPractical: mixedTo };
    const untilDay = days + firstDay;
    return { untilDay, scenario: { ...now, days: untilDay, additions, waterChanges: changed } };
  }

  function endsOf(replay: Replay, days: number): Record<SeasonId, number> {
    const lastH = (firstDay + days - 2) * 24 + CHANGE_HOUR - now.start.clockHour + 1;
    const of = (id: SeasonId) => meanOf(replay, id, lastH, lastH + 24);
    return { calcium: of('calcium'), magnesium: of('magnesium'), salinity: of('salinity') };
  }

  /** Solved on the engine by steps whose size hand arithmetic knows well enough. */
  function tried(
    percent: number,
    days: number,
  ): Extract<First, { kind: 'first' | 'refused' }> | undefined {
    const target = salinityTo ?? heldSalinity(tank);
    const exchanged = 1 - (1 - percent / 100) ** days;
    // Of what is poured on the first mornings, the changes take part away again.
    const kept = percent > 0 ? exchanged / ((percent / 100) * days) : 1;
    let doses: Doses = {
      grams: { calcium: 0, magnesium: 0 },
      mixedTo: percent === 0 ? now.waterChanges.salinityPractical : target,
    };
    let stretch = scenarioWith(percent, days, doses);
    for (let i = 0; ; i++) {
      const ends = endsOf(tank.replay([stretch]), days);
      const off = {
        calcium: raise.calcium ? raise.calcium.to - ends.calcium : 0,
        magnesium: raise.magnesium ? raise.magnesium.to - ends.magnesium : 0,
        salinity: percent > 0 ? target - ends.salinity : 0,
      };
      const isThere = (Object.keys(CLOSE) as SeasonId[]).every(
        (id) => Math.abs(off[id]) <= CLOSE[id],
      );
      if (isThere) break;
      if (i === TRIES) return undefined;
      const more = (metal: Metal): number => {
        const one = raise[metal];
        if (!one) return 0;
        const grams = gramsForMgPerL(one.additive, METAL_OF[metal], off[metal], volumeL);
        return threeFigures(Math.max(0, doses.grams[metal] + grams / (days * kept)));
      };
      const brought = metals.reduce(
        (ppt, metal) => ppt + off[metal] * pptPerMgPerL(metal, raise[metal]?.additive),
        0,
      );
      const mixedTo =
        percent > 0 ? doses.mixedTo + (off.salinity - brought) / exchanged : doses.mixedTo;
      doses = {
        grams: { calcium: more('calcium'), magnesium: more('magnesium') },
        mixedTo:
          percent > 0
            ? toDecimals(Math.max(MIXED.least, Math.min(MIXED.most, mixedTo)), 1)
            : mixedTo,
      };
      stretch = scenarioWith(percent, days, doses);
    }
    for (const use of tank.uses) {
      const replay = tank.replay([stretch], use);
      const [passed] = tank.passed(replay, stretch.untilDay, mostPerDay, use);
      if (passed) return { kind: 'refused', passed };
    }
    const poured: Partial<Record<Metal, Poured>> = {};
    for (const metal of metals) {
      const one = raise[metal];
      const gramsPerDay = doses.grams[metal];
      if (one && gramsPerDay > 0) poured[metal] = { additive: one.additive, gramsPerDay };
    }
    const change = {
      ...{ percent, litres: (percent / 100) * volumeL, salinityPractical: doses.mixedTo },
    };
    return {
      ...{ kind: 'first', days, share, poured, change: percent > 0 ? change : undefined },
      ...{ ends: endsOf(tank.replay([stretch]), days), stretch },
    };
  }
}

/** Salinity that comes with a milligram a litre of the metal. */
export function pptPerMgPerL(metal: Metal, additive: AdditiveId = salts[metal][0]!): number {
  const saltG = 1000 * saltKg(dissolve(additive, 1));
  return saltG / mgPerGram(additive, METAL_OF[metal]) / SALT_G_PER_KG_PER_PSU;
}

/** Salinity is held where it stands, unless that is near an edge. */
export function heldSalinity(tank: SeasonTank): number {
  const { low, high } = tank.band('salinity');
  const quarter = (high - low) / 4;
  return Math.max(low + quarter, Math.min(high - quarter, tank.level('salinity')));
}

const isOfSalinity = ({ line, fast }: Passed): boolean =>
  line?.quantity === 'salinity' || fast?.id === 'salinity';
