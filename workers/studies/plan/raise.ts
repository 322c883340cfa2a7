import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { Correction } from './correct';
import type { RunPlan } from './holding';
import { largestMoveDkh } from './holding';
import { doseWhere } from './root';

/** A daily limit is kept with a tenth to spare. */
const SPARE = 0.9;
/** Longer than a month is no correction but another plan. */
const MOST_DAYS = 30;
const LONGER = 1.4;
const CLOSE_DKH = 0.02;
/** The morning hour of a hand-poured dose. */
const HOUR = 9;
/** A scale of three figures. */
const scaleText = (grams: number) => Number(grams.toPrecision(3));

type Raise =
  | Omit<Extract<Correction, { kind: 'raise' }>, 'peakPh'>
  | Extract<Correction, { kind: 'rises' | 'tooFast' }>;

/** The upkeep with a weighed dose on each of the first mornings, and two days to look at after. */
function poured(upkeep: Scenario, additive: Carbonate, days: number, grams: number): Scenario {
  const first = upkeep.start.clockHour <= HOUR ? 1 : 2;
  const additions = Array.from({ length: grams > 0 ? days : 0 }, (_, i) => ({
    ...{ day: first + i, hour: HOUR, additive, grams },
  }));
  return { ...upkeep, days: days + 3, additions };
}

/** Mean of the day that follows the last dose, dKH: a morning's peak is no level. */
function afterwards(runPlan: RunPlan, scenario: Scenario, days: number): number {
  const dkh = readColumn(runPlan(scenario).trace, 'alkalinity_dkh');
  const { clockHour } = scenario.start;
  const first = clockHour <= HOUR ? 0 : 1;
  const lastH = Math.ceil((first + days - 1) * 24 + HOUR - clockHour);
  const day = dkh.subarray(Math.min(lastH, dkh.length - 24), lastH + 24);
  return day.reduce((sum, value) => sum + value, 0) / day.length;
}

/**
 * The fewest mornings whose doses reach the target and never move it faster than the limit;
 * `moveDkh` is the largest move of a day that a scenario may come to.
 */
export function raise(
  runPlan: RunPlan,
  upkeep: Scenario,
  targetDkh: number,
  additive: Carbonate,
  {
    moveDkh = (scenario: Scenario): number => largestMoveDkh(runPlan(scenario)),
    mostDays = MOST_DAYS,
  } = {},
): Raise {
  const missing = targetDkh - upkeep.tank.alkalinityDkh;
  const limit = upkeep.limits.alkalinityChangeDkhPerDay;
  const { tank, corals } = upkeep;
  for (let days = Math.ceil(missing / (limit * SPARE)); days <= mostDays;) {
    const scenarioWith = (grams: number) => poured(upkeep, additive, days, grams);
    const off = (grams: number) => afterwards(runPlan, scenarioWith(grams), days) - targetDkh;
    const alone = off(0);
    const most = gramsForDkh(
      additive,
      missing / days + 2 * corals.useDkhPerDay + 0.5,
      tank.volumeL,
    );
    const grams = alone >= -CLOSE_DKH ? 0 : doseWhere(off, 0, most, CLOSE_DKH);
    const scenario = scenarioWith(scaleText(grams ?? 0));
    const largestDailyDkh = moveDkh(scenario);
    if (grams !== undefined && largestDailyDkh <= limit) {
      return scaleText(grams) === 0
        ? { kind: 'rises', days, scenario, largestDailyDkh }
        : {
            ...{ kind: 'raise', additive, days, scenario, largestDailyDkh },
            gramsPerDay: scaleText(grams),
          };
    }
    days = Math.max(days + 1, Math.round(days * LONGER));
  }
  return { kind: 'tooFast', mostDkhPerDay: limit };
}
