import { bottled } from '../../../shared/recipe/bottled';
import { twoPart, type Carbonate, type PairNames } from '../../../shared/recipe/twoPart';
import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { refilled } from '../../../shared/recipe/refilled';
import { thinned } from '../../../shared/recipe/thinned';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { limewaterSaturationGPerL } from '../../../shared/seawater/limewater';
import { toppedOffLPerDay } from '../../../shared/verdict/measures';
import { saltMixes } from '../../../shared/water/saltMixes';
import { fullestReservoirL } from './fullDump';
import { holdingDose, peakPh } from './holding';
import { doseWhere } from './root';
import type { RunPlan } from './runPlan';

/** One way to hold the target. */
export interface Way {
  readonly id: 'limewater' | 'twoPart' | 'waterChanges';
  /** Water changes with another salt than the keeper's. */
  readonly otherSalt?: true;
  readonly scenario: Scenario;
}

/** More than this share of the water in a week is no plan but a rescue: common practice. */
const MOST_PERCENT = 50;
/** A strength is weighed no finer, and never above what was found, g/L; 0.58 × 100 is 57.99… */
const scaleText = (gramsPerL: number) => Math.floor(gramsPerL * 100 + 1e-6) / 100;
const CLOSE_PH = 0.005;
/** A reservoir that a dump allows must still last a day, with a fifth to spare. */
const LEAST_DAYS = 1.2;
/** Weaker mixes are tried when the reservoir would have to be smaller than that. */
const WEAKER = [1, 0.7, 0.5, 0.3];

const bare = (scenario: Scenario): Scenario => ({
  ...scenario,
  dosers: [],
  topOff: { ...scenario.topOff, additive: 'none', gramsPerL: 0, settledG: 0 },
});

/** What evaporates in a day, L, with a reservoir that cannot run dry. */
export function evaporatingLPerDay(runPlan: RunPlan, scenario: Scenario): number {
  const { topOff, tank } = scenario;
  const reservoirL = Math.max(tank.volumeL, topOff.reservoirL);
  const roomy = { ...topOff, reservoirL, refillEveryDays: 1, additive: 'none' as const };
  return Math.max(0.05, toppedOffLPerDay(runPlan({ ...scenario, days: 3, topOff: roomy }).trace));
}

/** Enough room for two days of evaporation, and refills before it runs dry. */
export function wellStocked(scenario: Scenario, litresPerDay: number): Scenario {
  const { topOff } = scenario;
  const reservoirL = Math.max(topOff.reservoirL, Math.ceil(litresPerDay * 2.5));
  return refilled({ ...scenario, topOff: { ...topOff, reservoirL } }, litresPerDay);
}

/** Pumps that bring the rest; soda ash, or bicarbonate where soda ash would lift pH too far. */
function withTwoPart(
  runPlan: RunPlan,
  scenario: Scenario,
  targetDkh: number,
  names: PairNames | undefined,
): Scenario {
  const { tank, corals, limits } = scenario;
  const solve = (carbonate: Carbonate) => {
    const dkhPerMl = gramsForDkh(carbonate, 1, tank.volumeL);
    const enough = (3 * (corals.useDkhPerDay + 0.5) * dkhPerMl * 1000) / 60;
    const most = Math.min(enough, quantityAt(['dosers', 0, 'mlPerDay']).quantity.max);
    const withDose = (ml: number) => ({
      ...scenario,
      dosers: bottled(twoPart(carbonate, ml, scenario, names)),
    });
    const ml = holdingDose(runPlan, withDose, targetDkh, most) ?? 0;
    if (ml === 0) return scenario;
    const whole = withDose(threeFigures(ml));
    return { ...whole, dosers: thinned(whole.dosers) };
  };
  const soda = solve('sodiumCarbonate');
  return peakPh(runPlan(soda)) <= limits.phHighNbs ? soda : solve('sodiumBicarbonate');
}

/** Limewater as far as evaporation, saturation, pH and a stuck pump let it; pumps for the rest. */
export function limewaterFirst(
  runPlan: RunPlan,
  scenario: Scenario,
  targetDkh: number,
  names?: PairNames,
): Way {
  const base = bare(scenario);
  const { topOff, tank, limits } = base;
  const most = scaleText((limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100);
  const withMix = (gramsPerL: number): Scenario => ({
    ...base,
    topOff: { ...topOff, additive: 'calciumHydroxide', gramsPerL },
  });
  const phAt = (gramsPerL: number) => peakPh(runPlan(withMix(gramsPerL)));
  const calm =
    phAt(most) <= limits.phHighNbs
      ? most
      : (doseWhere((g) => phAt(g) - limits.phHighNbs + CLOSE_PH, 0, most, CLOSE_PH) ?? 0);
  const holding = holdingDose(runPlan, withMix, targetDkh, calm);
  const wanted = scaleText(holding ?? calm);
  const litresPerDay = evaporatingLPerDay(runPlan, base);
  const { mixed, strength } = againstDump(withMix, wanted, litresPerDay) ?? {
    mixed: base,
    strength: 0,
  };
  const alone = holding !== undefined && strength === wanted;
  const whole = alone ? mixed : withTwoPart(runPlan, mixed, targetDkh, names);
  return { id: 'limewater', scenario: whole };
}

/** The strongest mix, and the fullest reservoir of it, that a stuck pump may empty into the tank. */
function againstDump(
  withMix: (gramsPerL: number) => Scenario,
  wanted: number,
  litresPerDay: number,
): { mixed: Scenario; strength: number } | undefined {
  for (const share of wanted > 0 ? WEAKER : []) {
    const strength = scaleText(wanted * share);
    const full = withMix(strength);
    const reservoirL = fullestReservoirL(full);
    if (reservoirL < LEAST_DAYS * litresPerDay) continue;
    const mixed = refilled({ ...full, topOff: { ...full.topOff, reservoirL } }, litresPerDay);
    return { mixed, strength };
  }
  return undefined;
}

export function twoPartAlone(
  runPlan: RunPlan,
  scenario: Scenario,
  targetDkh: number,
  names?: PairNames,
): Way {
  const whole = withTwoPart(runPlan, bare(scenario), targetDkh, names);
  return { id: 'twoPart', scenario: whole };
}

/** Water changes every week with the keeper's salt, or with another that holds more. */
export function waterChangesAlone(runPlan: RunPlan, scenario: Scenario, targetDkh: number): Way {
  const base = bare(scenario);
  const richest = saltMixes.toSorted((a, b) => b.alkalinityDkh - a.alkalinityDkh)[0]!;
  const weekly = (salt: typeof richest, percent: number): Scenario => ({
    ...base,
    waterChanges: { ...base.waterChanges, everyDays: 7, percent, salt },
  });
  const own = base.waterChanges.salt;
  for (const salt of [own, richest]) {
    const percent = holdingDose(runPlan, (p) => weekly(salt, p), targetDkh, MOST_PERCENT);
    if (percent === undefined) continue;
    const held = weekly(salt, Math.round(percent));
    return { id: 'waterChanges', ...(salt !== own && { otherSalt: true }), scenario: held };
  }
  return { id: 'waterChanges', otherSalt: true, scenario: weekly(richest, MOST_PERCENT) };
}
