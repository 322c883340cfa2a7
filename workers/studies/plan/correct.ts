import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf } from '../../../shared/verdict/lineResult';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { peakPh, runsWith, type RunPlan } from './holding';
import { doseWhere } from './root';

/** How the water gets to the target without breaking a daily limit. */
export type Correction =
  | { readonly kind: 'none' }
  /** No daily dose gets there within the limit: what holds the water today is too far off. */
  | { readonly kind: 'tooFast'; readonly mostDkhPerDay: number }
  | {
      readonly kind: 'raise';
      readonly additive: Carbonate;
      readonly gramsPerDay: number;
      readonly days: number;
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
      readonly peakPh: number;
    }
  | {
      readonly kind: 'wait';
      /** Days until the water stands at the target; undefined when it never gets there in time. */
      readonly days: number | undefined;
      /** Share of the plan's dose that goes on meanwhile: 0 unless the fall would be too fast. */
      readonly shareOfDose: number;
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
    };

/** Nearer than a test can tell, dKH. */
const NEAR_DKH = 0.1;
const CLOSE_DKH = 0.01;
/** A daily limit is kept with a tenth to spare. */
const SPARE = 0.9;
const MOST_DAYS = 60;
/** The morning hour of a hand-poured dose. */
const HOUR = 9;
const scaleText = (grams: number) => Number(grams.toPrecision(3));

const dailyChange = (runPlan: RunPlan, scenario: Scenario) =>
  lineOf(runPlan(scenario).lines, 'alkalinityChange').worst;

/** The upkeep with a weighed dose on each of the first mornings, and a day to look at afterwards. */
function poured(upkeep: Scenario, additive: Carbonate, days: number, grams: number): Scenario {
  const first = upkeep.start.clockHour <= HOUR ? 1 : 2;
  const additions = Array.from({ length: days }, (_, i) => ({
    ...{ day: first + i, hour: HOUR, additive, grams },
  }));
  return { ...upkeep, days: days + 2, additions };
}

/** Alkalinity on the morning after the last dose, dKH. */
function afterwards(runPlan: RunPlan, scenario: Scenario, days: number): number {
  const dkh = readColumn(runPlan(scenario).trace, 'alkalinity_dkh');
  const first = scenario.additions[0]?.day ?? 1;
  const hour = (first - 1 + days) * 24 + HOUR - scenario.start.clockHour;
  return dkh[Math.min(dkh.length - 1, hour)]!;
}

function raise(
  runPlan: RunPlan,
  upkeep: Scenario,
  targetDkh: number,
  additive: Carbonate,
): Correction {
  const missing = targetDkh - upkeep.tank.alkalinityDkh;
  const most = upkeep.limits.alkalinityChangeDkhPerDay * SPARE;
  const { tank, corals, limits } = upkeep;
  for (let days = Math.ceil(missing / most); days <= MOST_DAYS; days = Math.ceil(days * 1.2)) {
    const grams = doseWhere(
      (g) => afterwards(runPlan, poured(upkeep, additive, days, g), days) - targetDkh,
      0,
      gramsForDkh(additive, missing / days + 2 * corals.useDkhPerDay + 0.5, tank.volumeL),
      CLOSE_DKH,
    );
    if (grams === undefined) continue;
    const gramsPerDay = scaleText(grams);
    const scenario = poured(upkeep, additive, days, gramsPerDay);
    const largestDailyDkh = dailyChange(runPlan, scenario);
    if (largestDailyDkh > limits.alkalinityChangeDkhPerDay) continue;
    const peak = peakPh(runPlan(scenario));
    return { kind: 'raise', additive, days, scenario, gramsPerDay, largestDailyDkh, peakPh: peak };
  }
  return { kind: 'tooFast', mostDkhPerDay: limits.alkalinityChangeDkhPerDay };
}

const dosedAt = (plan: Scenario, share: number): Scenario => ({
  ...plan,
  days: MOST_DAYS,
  additions: [],
  dosers: plan.dosers.map((doser) => ({ ...doser, mlPerDay: doser.mlPerDay * share })),
  topOff: { ...plan.topOff, gramsPerL: plan.topOff.gramsPerL * share, settledG: 0 },
});

/** The dose falls to nothing, or to the share that keeps the fall inside the daily limit. */
function wait(runPlan: RunPlan, upkeep: Scenario, targetDkh: number): Correction {
  const most = upkeep.limits.alkalinityChangeDkhPerDay * SPARE;
  const change = (share: number) => dailyChange(runPlan, { ...dosedAt(upkeep, share), days: 3 });
  const share = change(0) <= most ? 0 : (doseWhere((s) => most - change(s), 0, 1, CLOSE_DKH) ?? 1);
  const scenario = dosedAt(upkeep, Math.ceil(share * 100) / 100);
  const dkh = readColumn(runPlan(scenario).trace, 'alkalinity_dkh');
  const there = dkh.findIndex((value) => value <= targetDkh);
  const days = there < 0 ? undefined : there / 24;
  const shown = { ...scenario, days: Math.max(1, Math.ceil(days ?? MOST_DAYS)) };
  return {
    ...{ kind: 'wait', days, shareOfDose: Math.ceil(share * 100) / 100, scenario: shown },
    largestDailyDkh: dailyChange(runPlan, shown),
  };
}

/**
 * From what the water is to the target, on runs of the engine: by weighed doses when it is low, by
 * waiting when it is high. `upkeep` is the tank as it stands with the dosing that holds it.
 */
export function correct(
  upkeep: Scenario,
  targetDkh: number,
  additive: Carbonate,
  options: SimulationOptions = usualOptions,
): Correction {
  const runPlan = runsWith(options);
  const off = targetDkh - upkeep.tank.alkalinityDkh;
  if (Math.abs(off) < NEAR_DKH) return { kind: 'none' };
  return off > 0 ? raise(runPlan, upkeep, targetDkh, additive) : wait(runPlan, upkeep, targetDkh);
}
