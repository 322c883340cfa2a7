import { mgPerGram } from '../../shared/recipe/gramsFor';
import { SALT_G_PER_KG_PER_PSU } from '../../shared/water/referenceSeawater';
import { stateAfter } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { METAL_OF, metals, type Metal } from '../../workers/studies/season/metals';
import { type First } from '../../workers/studies/season/firstDays';
import { meanOf } from '../../workers/studies/season/seasonTank';
import type { Weekly } from '../../workers/studies/season/weeklyTold';
import { SEASON_DAYS } from '../../workers/studies/season/weeks';
import { replayed, type Replay, type Stretch } from '../../workers/studies/turn/replay';
import type { AnySeason } from './anySeason';

const options = { ...usualOptions, toleranceUmolPerKg: 0.5 };

/** What a plan does, in another water. */
export function replayIn({ truth }: AnySeason, stretches: readonly Stretch[]): Replay {
  const inTruth = stretches.map(({ scenario, untilDay }) => {
    const { additions, waterChanges, dosers } = scenario;
    return { scenario: { ...truth, additions, waterChanges, dosers }, untilDay };
  });
  return replayed(inTruth, stateAfter({ ...truth, days: 0 }, options), options);
}

type Firsts = Extract<First, { kind: 'first' }>;

/** Where the mean of the day after the last morning stands. */
export function endOf(replay: Replay, { days }: Firsts, clockHour: number, metal: Metal): number {
  const lastH = ((clockHour < 9 ? 1 : 2) + days - 2) * 24 + 11 - clockHour;
  return meanOf(replay, metal, lastH, lastH + 24);
}

/**
 * The keeper's arithmetic: grams = Δmg/L × L / mass fraction, shared out over the same mornings; what
 * the corals, the plan and its changes do meanwhile is left out.
 */
export function firstByHand({ known }: AnySeason, { stretch, poured, days }: Firsts): Stretch {
  const { scenario, untilDay } = stretch;
  const additions = scenario.additions.map((addition) => {
    const metal = metals.find((one) => poured[one]?.additive === addition.additive)!;
    const { limits, tank } = known;
    const [level, target] = {
      calcium: [tank.calciumMgPerL, (limits.calciumLowMgPerL + limits.calciumHighMgPerL) / 2],
      magnesium: [
        tank.magnesiumMgPerL,
        (limits.magnesiumLowMgPerL + limits.magnesiumHighMgPerL) / 2,
      ],
    }[metal] as [number, number];
    const massFraction = mgPerGram(addition.additive, METAL_OF[metal]) / 1000;
    const grams = ((target - level) * tank.volumeL) / 1000 / massFraction;
    return { ...addition, grams: grams / days };
  });
  return { scenario: { ...scenario, additions }, untilDay };
}

/** NaCl that a pair leaves for each dKH that corals take of it: 58.443 g/mol × 0.35665 meq/L. */
const NACL_MG_PER_L_PER_DKH = 20.84;

/**
 * Litres of tank water to be replaced with fresh water in a week, by hand: the salt that the pair
 * brings in a week over the salinity. As new water of so many litres it is so much weaker.
 */
export function mixedByHand(any: AnySeason, { exchange }: Weekly): number {
  const { known, carrier, broughtDkhPerDay } = any;
  const { salinityPractical: mixedTo } = known.waterChanges;
  if (carrier !== 'pair') return mixedTo;
  const saltG = (NACL_MG_PER_L_PER_DKH / 1000) * broughtDkhPerDay * 7 * known.tank.volumeL;
  const saltGPerL = known.tank.salinityPractical * SALT_G_PER_KG_PER_PSU * 1.025;
  return mixedTo * (1 - saltG / saltGPerL / exchange!.litresPerWeek);
}

/** The same season with the last stretch's new water mixed to another salinity. */
export const withMixed = (stretches: readonly Stretch[], salinityPractical: number): Stretch[] =>
  stretches.map((one, i) =>
    i < stretches.length - 1
      ? one
      : {
          ...one,
          scenario: {
            ...one.scenario,
            waterChanges: { ...one.scenario.waterChanges, salinityPractical },
          },
        },
  );

/** Mean salinity of the season's last week. */
export const endsAtPpt = (replay: Replay): number =>
  meanOf(replay, 'salinity', SEASON_DAYS * 24 - 168, SEASON_DAYS * 24);
