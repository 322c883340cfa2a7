import type { Carbonate } from '../../../shared/recipe/twoPart';
import { momentH } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf } from '../../../shared/verdict/lineResult';
import type { Run } from '../../engine/run';
import type { Correction } from './correct';
import { firstMorning, MORNING_HOUR } from './firstMorning';
import { largestMoveDkh, peakPh } from './holding';

export type Poured = Extract<Correction, { kind: 'raise' }>;

/** The upkeep with one more weighed dose on each of the first mornings, and the day to look at after. */
export function withMornings(
  upkeep: Scenario,
  additive: Carbonate,
  days: number,
  grams: number,
): Scenario {
  const first = firstMorning(upkeep.start);
  const additions = Array.from({ length: grams > 0 ? days : 0 }, (_, i) => ({
    ...{ day: first + i, hour: MORNING_HOUR, additive, grams },
  }));
  return { ...upkeep, days: days + 1, additions: [...upkeep.additions, ...additions] };
}

/** Mean of the day that follows the last dose, dKH: a morning's peak is no level. */
export function afterwards({ trace }: Run, start: Scenario['start'], days: number): number {
  const dkh = readColumn(trace, 'alkalinity_dkh');
  const last = { day: firstMorning(start) + days - 1, hour: MORNING_HOUR };
  const lastH = Math.ceil(momentH(last, start.clockHour));
  const day = dkh.subarray(Math.min(lastH, dkh.length - 24), lastH + 24);
  return day.reduce((sum, value) => sum + value, 0) / day.length;
}

export const highestDkh = ({ lines }: Run): number => lineOf(lines, 'alkalinityHigh').worst;

/** What was poured, by its runs at every consumption that is possible. */
export function pouredBy(
  runs: readonly Run[],
  told: Pick<Poured, 'additive' | 'gramsPerDay' | 'days' | 'scenario' | 'stopsFor'>,
): Poured {
  const levels = runs.map((found) => afterwards(found, told.scenario.start, told.days));
  return {
    ...{ kind: 'raise', ...told },
    endsDkh: [Math.min(...levels), Math.max(...levels)],
    largestDailyDkh: Math.max(...runs.map(largestMoveDkh)),
    peakPh: Math.max(...runs.map(peakPh)),
  };
}
