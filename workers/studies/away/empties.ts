import type { Harmless } from './harmless';
import type { Most, Need } from './needs';
import type { Provision } from './provided';

/** A vessel, and how much of what is in it today does no harm all at once. */
export interface Vessel extends Need {
  readonly harmless: Harmless | undefined;
}

/** Whether so much covers what may be used. */
export const covers = (litres: number, { mostUsedL }: Most): boolean =>
  mostUsedL !== undefined && litres >= mostUsedL;

/** The vessel that may be empty first of those that nobody fills up, and after how many days at worst. */
export interface Empties {
  readonly pump: number | undefined;
  readonly days: number;
}

export function emptiesFirst(
  { scenario, refillEveryDays, refilledPumps }: Provision,
  vessels: readonly Vessel[],
): Empties | undefined {
  const found = vessels.flatMap((vessel): Empties[] => {
    const { pump, dailyMostL } = vessel;
    const isFilledUp = pump === undefined ? refillEveryDays > 0 : refilledPumps.includes(pump);
    const litres = pump === undefined ? scenario.topOff.reservoirL : scenario.dosers[pump]!.stockL;
    if (isFilledUp || dailyMostL === 0 || covers(litres, vessel)) return [];
    return [{ pump, days: litres / dailyMostL }];
  });
  return found.toSorted((a, b) => a.days - b.days)[0];
}
