import { newestOf } from '../../../shared/log/newest';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { indexOf } from '../../../shared/species/block';
import { dissolved } from '../../../shared/species/species';
import type { TankView } from '../../engine/tankView';

/** Calcium and magnesium, mg/L. */
export interface Metals {
  readonly calciumMgPerL: number;
  readonly magnesiumMgPerL: number;
}

/** When each was last read, hours since the start of the log: 0 where the plan's own value stands in. */
export function metalsReadH(readings: readonly Reading[], startH: number): Metals {
  const readH = (name: keyof Metals) => {
    const newest = newestOf(readings, name);
    return newest ? hoursOf(newest.at) - startH : 0;
  };
  return { calciumMgPerL: readH('calciumMgPerL'), magnesiumMgPerL: readH('magnesiumMgPerL') };
}

export const metalsIn = (view: TankView): Metals => ({
  calciumMgPerL: view.mgPerL(indexOf.Ca, dissolved.Ca.molarMassG),
  magnesiumMgPerL: view.mgPerL(indexOf.Mg, dissolved.Mg.molarMassG),
});

export const metalNames = ['calciumMgPerL', 'magnesiumMgPerL'] as const;
export const noMetals: Metals = { calciumMgPerL: 0, magnesiumMgPerL: 0 };

export const movedBy = (from: Metals, to: Metals): Metals => ({
  calciumMgPerL: to.calciumMgPerL - from.calciumMgPerL,
  magnesiumMgPerL: to.magnesiumMgPerL - from.magnesiumMgPerL,
});
