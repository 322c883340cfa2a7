import { mgPerGram } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { toDecimals } from '../../../shared/units/digits';
import { METAL_OF, metals, pptPerMgPerL, salts, type Metal } from './metals';
import { seasonQuantities, type SeasonId } from './quantity';
import { bringsOnly, lastWeek, perWeekOf, type Changes, type Doses, type Weeks } from './weeks';

/** Nobody mixes new water weaker or stronger for good. */
const MIXED = { least: 20, most: 40 } as const;
const ROUNDS = 4;
const TRIES = 4;
const CLOSE = { calcium: 2, magnesium: 5, salinity: 0.05 } as const;
/** The step by which the effect of a bottle's salt is tried. */
const STEP = 0.2;

/** What is turned for a quantity: the new water, what is poured, or what the bottles hold. */
type Turned = ReadonlyMap<SeasonId, 'mix' | 'pour' | 'bottles'>;

/** Whether the bottles bring a metal beside alkalinity. */
export const bottlesBring = ({ dosers }: Scenario, metal: Metal): boolean =>
  dosers.some(
    ({ recipe, mlPerDay }) =>
      mlPerDay > 0 && recipe.some(({ additive }) => bringsOnly(additive, metal)),
  );

/** What has to be turned, and how far; undefined where salinity is beyond what such changes can do. */
export function weeklyDoses(weeks: Weeks, changes: Changes): Doses | undefined {
  const { tank, plain } = weeks;
  let doses: Doses | undefined = plain;
  let turned: Turned = new Map();
  for (let round = 0; round < ROUNDS && doses; round++) {
    const replay = tank.replay(weeks.stretches(changes, doses));
    const more = weeks
      .outOf(replay)
      .flatMap(({ id, side }): [SeasonId, 'mix' | 'pour' | 'bottles'][] => {
        if (turned.has(id)) return [];
        if (id === 'salinity') return [[id, 'mix']];
        if (side === 'below') return [[id, 'pour']];
        return bottlesBring(tank.now, id) ? [[id, 'bottles']] : [];
      });
    if (more.length === 0) break;
    turned = new Map([...turned, ...more]);
    doses = towards(weeks, changes, doses, turned);
  }
  return doses;
}

/** Solved on the engine, until it stands where it is aimed at. */
function towards(weeks: Weeks, changes: Changes, from: Doses, turned: Turned): Doses | undefined {
  const { tank, aim, volumeL } = weeks;
  const perWeek = perWeekOf(changes, volumeL);
  const exchanged = 1 - Math.exp(-perWeek * weeks.count);
  if (turned.has('salinity') && exchanged === 0) return undefined;
  // Weeks whose pouring is still there at the end.
  const kept = perWeek > 0 ? exchanged / perWeek : weeks.count;
  const perShare = new Map<Metal, number>();
  const endsWith = (doses: Doses): Record<SeasonId, number> => {
    const replay = tank.replay(weeks.stretches(changes, doses));
    const at = (metal: Metal) => weeks.standsAt(replay, metal);
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
