import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { SeasonTargets } from '../../../shared/recipe/seasonTargets';
import type { AdditiveId } from '../../../shared/species/additives';
import { metals, salts, type Metal } from './metals';
import { seasonQuantities } from './quantity';
import type { SeasonTank } from './seasonTank';

/** Where the keeper is to get, with what. */
export interface FirstAsked {
  /** Undefined where nothing has to be raised. */
  readonly raise: Partial<Record<Metal, { readonly to: number; readonly additive: AdditiveId }>>;
  /** Undefined where salinity may stay. */
  readonly salinityTo: number | undefined;
  readonly mostPerDay: MostPerDay;
}

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

/** The same, but only a share of the way there. */
export function partOf(tank: SeasonTank, asked: FirstAsked, share: number): FirstAsked {
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

/** Salinity is held where it stands, unless that is near an edge. */
export function heldSalinity(tank: SeasonTank): number {
  const { low, high } = tank.band('salinity');
  const quarter = (high - low) / 4;
  return Math.max(low + quarter, Math.min(high - quarter, tank.level('salinity')));
}
