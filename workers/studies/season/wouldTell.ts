import { gramsForMgPerL } from '../../../shared/recipe/gramsFor';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';
import { SALT_G_PER_KG_PER_PSU } from '../../../shared/water/referenceSeawater';
import { seawaterDensityKgPerM3 } from '../../../shared/seawater/density';
import { newWaterHolds } from './newWater';
import { seasonQuantities, type SeasonId } from './quantity';

/** Something that would make up what the plan does not explain, and is to be looked at. */
export type Would =
  /** A kit that reads so much too high throughout, where water changes would have shown that. */
  | { readonly kind: 'kit'; readonly readsHigh: number | undefined }
  /** New water that holds so much, mg/L at the salinity it is mixed to, or ppt. */
  | { readonly kind: 'bag'; readonly holds: number; readonly typed: number }
  /** So many grams a week that nobody wrote down. */
  | { readonly kind: 'unlogged'; readonly additive: AdditiveId; readonly gramsPerWeek: number }
  /** Salinity itself strayed: what is dissolved goes with it, by so much of this quantity. */
  | { readonly kind: 'withSalinity'; readonly moved: number }
  /** Salt that leaves as creep, spray or skimmate, g a week. */
  | { readonly kind: 'creep'; readonly gramsPerWeek: number }
  /** Skeletons and coralline algae that take so much, mmol of magnesium for each mol of calcium. */
  | { readonly kind: 'skeleton'; readonly mgPerCa: number; readonly typed: number };

/** What is asked of what strayed. */
export interface Stray {
  readonly id: SeasonId;
  readonly by: number;
  readonly days: number;
  readonly level: number;
  /** Salinity that strayed beyond its doubt, as a share of itself. */
  readonly salinityShare: number;
  readonly scenario: Scenario;
  /** Where this quantity ends in another tank, less where it ends in this one. */
  readonly endsOff: (other: Scenario) => number;
}

const ADDITIVES: Readonly<Record<'calcium' | 'magnesium', AdditiveId>> = {
  calcium: 'calciumChlorideDihydrate',
  magnesium: 'magnesiumChlorideHexahydrate',
};
const METAL = { calcium: 'Ca', magnesium: 'Mg' } as const;
/** Nobody's bag, or skeleton, is farther off than this. */
const MOST_BAG_SHARE = 0.3;
const MOST_MG_PER_CA = 200;
/** No kit is farther off than so many σ, and sold. */
const MOST_KIT_SIGMAS = 6;
/** The step by which an effect is tried. */
const STEP = 0.1;

function bagOf({ id, by, scenario, endsOff }: Stray): Would[] {
  const { waterChanges } = scenario;
  const { salt, salinityPractical: mixedTo } = waterChanges;
  const holds = newWaterHolds(scenario);
  const of = {
    calcium: () => ({
      typed: holds.calcium,
      more: { salt: { ...salt, calciumMgPerL: salt.calciumMgPerL * (1 + STEP) } },
    }),
    magnesium: () => ({
      typed: holds.magnesium,
      more: { salt: { ...salt, magnesiumMgPerL: salt.magnesiumMgPerL * (1 + STEP) } },
    }),
    salinity: () => ({ typed: mixedTo, more: { salinityPractical: mixedTo * (1 + STEP) } }),
  }[id]();
  const effect = endsOff({ ...scenario, waterChanges: { ...waterChanges, ...of.more } });
  if (!(effect > 0)) return [];
  const share = (STEP * by) / effect;
  return Math.abs(share) > MOST_BAG_SHARE
    ? []
    : [{ kind: 'bag', holds: of.typed * (1 + share), typed: of.typed }];
}

/**
 * A kit that reads a constant too high hides that the true water is drawn less, or more, towards the
 * new: the level that the run begins with is off by as much.
 */
function kitOf({ id, by, scenario, endsOff }: Stray): Would {
  const { reading, kitSigma } = seasonQuantities.find((one) => one.id === id)!;
  const { tank } = scenario;
  const lower = { ...scenario, tank: { ...tank, [reading]: tank[reading] - kitSigma } };
  const lessDrawn = (endsOff(lower) + kitSigma) / kitSigma;
  const readsHigh = by / lessDrawn;
  const isLikely = lessDrawn > 0.1 && Math.abs(readsHigh) <= MOST_KIT_SIGMAS * kitSigma;
  return { kind: 'kit', readsHigh: isLikely ? readsHigh : undefined };
}

function skeletonOf({ id, by, scenario, endsOff }: Stray): Would[] {
  if (id !== 'magnesium' || by > 0) return [];
  const { corals } = scenario;
  const more = corals.skeletonMgPerCa + 4;
  const effect = endsOff({ ...scenario, corals: { ...corals, skeletonMgPerCa: more } });
  const mgPerCa = corals.skeletonMgPerCa + (4 * by) / effect;
  return effect < 0 && mgPerCa <= MOST_MG_PER_CA
    ? [{ kind: 'skeleton', mgPerCa, typed: corals.skeletonMgPerCa }]
    : [];
}

/** Everything that would make it up, the likeliest to be looked at first. */
export function wouldTell(stray: Stray): Would[] {
  const { id, by, days, level, salinityShare, scenario } = stray;
  const { volumeL, tempC } = scenario.tank;
  const perWeek = 7 / days;
  const carried = id === 'salinity' ? 0 : salinityShare * level;
  // What goes with the salinity the other way explains nothing.
  const withSalinity: Would[] = carried * by > 0 ? [{ kind: 'withSalinity', moved: carried }] : [];
  const kgPerL = seawaterDensityKgPerM3({ tempC, salinityPractical: 35 }) / 1000;
  const unlogged = (): Would[] => {
    if (id === 'salinity') {
      const grams = Math.abs(by) * SALT_G_PER_KG_PER_PSU * kgPerL * volumeL;
      return by < 0 ? [{ kind: 'creep', gramsPerWeek: grams * perWeek }] : [];
    }
    const grams = gramsForMgPerL(ADDITIVES[id], METAL[id], by, volumeL);
    return by > 0
      ? [{ kind: 'unlogged', additive: ADDITIVES[id], gramsPerWeek: grams * perWeek }]
      : [];
  };
  return [kitOf(stray), ...withSalinity, ...bagOf(stray), ...skeletonOf(stray), ...unlogged()];
}
