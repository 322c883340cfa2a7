import type { Scenario } from '../../shared/scenario/schema';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L } from '../../shared/recipe/twoPart';
import { limewaterDkhFromGPerL } from '../../shared/seawater/limewater';
import { readColumn } from '../../shared/trace/trace';
import { run, stateAfter } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { dayMeans } from '../../workers/studies/dayMeans';
import { replayed, type Replay, type Stretch } from '../../workers/studies/turn/replay';
import type { Turned } from '../../workers/studies/turn/turned';
import type { AnyTurn } from './anyTurn';

const DAYS = 28;

/** What a plan doses, in another water. */
const dosing = ({ dosers, topOff, additions }: Scenario) => ({ dosers, topOff, additions });

export const replayIn = (truth: Scenario, stretches: readonly Stretch[]): Replay =>
  replayed(
    stretches.map((one) => ({ ...one, scenario: { ...truth, ...dosing(one.scenario) } })),
    stateAfter({ ...truth, days: 0 }),
    usualOptions,
  );

/** The true tank at another level: what its corals take was typed for the water that it begins with. */
export function atLevel(truth: Scenario, alkalinityDkh: number): Scenario {
  const { omegaReference } = settle(truth, usualOptions);
  const start = { ...truth.start, omegaReference };
  return { ...truth, start, tank: { ...truth.tank, alkalinityDkh } };
}

/** A turn in the tank's true water, with what its corals truly take. */
export function turnInTruth(truth: Scenario, { scenario, heldPlan, first }: Turned): Replay {
  const held = { ...heldPlan, additions: scenario.additions };
  const stretches =
    first.kind === 'less'
      ? [
          { scenario, untilDay: first.days },
          { scenario: { ...heldPlan, additions: [] }, untilDay: first.days + DAYS },
        ]
      : [{ scenario: held, untilDay: DAYS }];
  return replayIn(truth, stretches);
}

/** How the tank goes on as it runs. */
export const leftAlone = (truth: Scenario): Replay =>
  replayIn(truth, [{ scenario: truth, untilDay: DAYS }]);

/**
 * The keeper's arithmetic: new dose = old dose + (fall per day × volume) / strength, and the gap to
 * the target poured in, or fallen through with less, in even parts no larger than the daily limit.
 */
export function byHandInTruth({ truth, known, targetDkh, carrier }: AnyTurn): Replay {
  const { volumeL } = truth.tank;
  const fell = readColumn(run({ ...truth, days: 2 }).trace, 'alkalinity_dkh');
  const useError = known.corals.useDkhPerDay - truth.corals.useDkhPerDay;
  const fallPerDay = (fell[0]! - fell[48]!) / 2 + useError;
  const powder = carrier === 'bicarbonate' ? 'sodiumBicarbonate' : 'sodiumCarbonate';
  const more = (dkhPerDay: number): Scenario => {
    if (carrier === 'limewater') {
      const { topOff, evaporation } = truth;
      const perGram = (evaporation.litresPerDay * limewaterDkhFromGPerL(1)) / volumeL;
      const gramsPerL = Math.min(1.6, Math.max(0, topOff.gramsPerL + dkhPerDay / perGram));
      return { ...truth, topOff: { ...topOff, gramsPerL: Number(gramsPerL.toFixed(2)) } };
    }
    const ml = (gramsForDkh(powder, dkhPerDay, volumeL) / STOCK_G_PER_L[powder]) * 1000;
    const before = truth.dosers[0]!.mlPerDay;
    const now = Math.max(0, Number((before + ml).toPrecision(3)));
    const dosers = truth.dosers.map((doser) => ({
      ...doser,
      mlPerDay: (doser.mlPerDay * now) / before,
    }));
    return { ...truth, dosers };
  };
  const gap = targetDkh - known.tank.alkalinityDkh;
  const limit = truth.limits.alkalinityChangeDkhPerDay;
  const parts = Math.max(1, Math.ceil(Math.abs(gap) / limit));
  const held = more(fallPerDay);
  if (gap >= 0) {
    const grams = gramsForDkh('sodiumBicarbonate', gap / parts, volumeL);
    const first = truth.start.clockHour < 9 ? 1 : 2;
    const additions = Array.from({ length: gap > 0.1 ? parts : 0 }, (_, i) => ({
      ...{ day: first + i, hour: 9, additive: 'sodiumBicarbonate' as const, grams },
    }));
    return replayIn(truth, [{ scenario: { ...held, additions }, untilDay: DAYS }]);
  }
  if (gap > -0.1) return replayIn(truth, [{ scenario: held, untilDay: DAYS }]);
  return replayIn(truth, [
    { scenario: more(fallPerDay + gap / parts), untilDay: parts },
    { scenario: held, untilDay: parts + DAYS },
  ]);
}

/** Farthest from the target of any day's mean, days 7 to 28, dKH. */
export const farthestDkh = (replay: Replay, targetDkh: number): number => {
  const means = dayMeans(replay.dkh).slice(7, DAYS);
  return means.length < DAYS - 7
    ? Infinity
    : Math.max(...means.map((mean) => Math.abs(mean - targetDkh)));
};
