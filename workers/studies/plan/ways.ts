import { say } from '../../../shared/words/plans';
import { twoPart, type Carbonate } from '../../../shared/recipe/twoPart';
import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import type { Scenario } from '../../../shared/scenario/schema';
import { limewaterSaturationGPerL } from '../../../shared/seawater/limewater';
import { lastOf } from '../../../shared/verdict/measures';
import { saltMixes } from '../../../shared/water/saltMixes';
import { holdingDose, peakPh, type RunPlan } from './holding';
import { doseWhere } from './root';

/** One way to hold the target. */
export interface Way {
  readonly id: 'limewater' | 'twoPart' | 'waterChanges';
  readonly title: string;
  readonly scenario: Scenario;
}

/** More than this share of the water in a week is no plan but a rescue: common practice. */
const MOST_PERCENT = 50;
/** A pump is set no finer than this, mL/day; a scale reads no finer, g/L. */
const pumpText = (ml: number) => Number(ml.toPrecision(3));
const scaleText = (gramsPerL: number) => Math.floor(gramsPerL * 100) / 100;
const CLOSE_PH = 0.005;

const bare = (scenario: Scenario): Scenario => ({
  ...scenario,
  dosers: [],
  topOff: { ...scenario.topOff, additive: 'none', gramsPerL: 0, settledG: 0 },
});

/** Enough room for two days of evaporation, and refills before it runs dry. */
export function wellStocked(runPlan: RunPlan, scenario: Scenario): Scenario {
  const { topOff, tank } = scenario;
  const roomy = {
    ...topOff,
    reservoirL: Math.max(tank.volumeL, topOff.reservoirL),
    refillEveryDays: 1,
  };
  const { trace } = runPlan({ ...scenario, days: 3, topOff: { ...roomy, additive: 'none' } });
  const litres = Math.max(0.05, lastOf(trace, 'topoff_l') / 3);
  const reservoirL = Math.max(topOff.reservoirL, Math.ceil(litres * 2.5));
  const lasts = Math.max(1, Math.floor((reservoirL / litres) * 0.8));
  const often = topOff.refillEveryDays > 0 ? topOff.refillEveryDays : lasts;
  return {
    ...scenario,
    topOff: { ...topOff, reservoirL, refillEveryDays: Math.min(often, lasts) },
  };
}

/** Pumps that bring the rest; soda ash, or bicarbonate where soda ash would lift pH too far. */
function withTwoPart(runPlan: RunPlan, scenario: Scenario, targetDkh: number): Scenario {
  const { tank, corals, limits } = scenario;
  const solve = (carbonate: Carbonate) => {
    const dkhPerMl = gramsForDkh(carbonate, 1, tank.volumeL);
    const most = (3 * (corals.useDkhPerDay + 0.5) * dkhPerMl * 1000) / 60;
    const withDose = (ml: number) => ({ ...scenario, dosers: twoPart(carbonate, ml, scenario) });
    const ml = holdingDose(runPlan, withDose, targetDkh, most) ?? 0;
    return ml > 0 ? withDose(pumpText(ml)) : scenario;
  };
  const soda = solve('sodiumCarbonate');
  return peakPh(runPlan(soda)) <= limits.phHighNbs ? soda : solve('sodiumBicarbonate');
}

/** Limewater as far as evaporation, saturation and pH let it; pumps for the rest. */
export function limewaterFirst(runPlan: RunPlan, scenario: Scenario, targetDkh: number): Way {
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
  const strength = scaleText(holding ?? calm);
  const mixed = strength > 0 ? withMix(strength) : base;
  const whole = holding === undefined ? withTwoPart(runPlan, mixed, targetDkh) : mixed;
  return { id: 'limewater', title: say.ways.limewater, scenario: whole };
}

export function twoPartAlone(runPlan: RunPlan, scenario: Scenario, targetDkh: number): Way {
  const whole = withTwoPart(runPlan, bare(scenario), targetDkh);
  return { id: 'twoPart', title: say.ways.twoPart, scenario: whole };
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
    const title = salt === own ? say.ways.changesAlone : say.ways.changesOtherSalt;
    return { id: 'waterChanges', title, scenario: weekly(salt, Math.round(percent)) };
  }
  const scenarioMost = weekly(richest, MOST_PERCENT);
  return { id: 'waterChanges', title: say.ways.changesOtherSalt, scenario: scenarioMost };
}
