import type { Scenario } from '../../../shared/scenario/schema';
import { answerLog } from '../../../workers/studies/answerLog';
import { run } from '../../../workers/engine/run';
import { dailyMeans, heldDkh, largestMoveDkh } from '../../../workers/studies/plan/holding';
import { doseWhere } from '../../../workers/studies/plan/root';
import { threePlans, type Candidate } from '../../../workers/studies/plan/threePlans';
import type { Open } from '../../../workers/studies/plan/onTarget';
import { oddsOnTarget } from '../../../workers/studies/plan/onTarget';
import { planQuestion } from '../../../workers/studies/plan/planQuestion';
import { atRest } from '../../../workers/studies/plan/atRest';
import { usualOptions } from '../../../workers/engine/simulation';
import { readColumn } from '../../../shared/trace/trace';
import { dayMeans } from '../../../workers/studies/dayMeans';
import { drawOf } from './draw';
import { byLine, keep } from './keeper';
import { carriers, drawTank, typedPlan, type Tank } from './tank';

const TARGET_DKH = 8.5;
const DAYS = 28;

/** An offered plan in the twin's true water. */
export interface PlanInTruth {
  readonly id: Candidate['id'];
  readonly promisedDays: number;
  /** Farthest from the target of any day's mean, days 7 to 28, dKH. */
  readonly farthestDkh: number;
  /** The same by hand: the straight line's use, dosed with the same powder. */
  readonly byHandFarthestDkh: number;
  readonly largestMoveDkh: number;
  readonly allowedDkhPerDay: number;
  /** Grams of it against those that hold the target: 0.05 is five in a hundred too much. */
  readonly gramsOff: number;
  /** Odds that it stays near the target, as the log has it, and the best that any dose would have. */
  readonly odds: number;
  readonly bestOdds: number;
}

/** A plan with so many times its powders. */
const dosedMore = ({ topOff, dosers, ...rest }: Scenario, times: number): Scenario => ({
  ...rest,
  topOff: { ...topOff, gramsPerL: topOff.gramsPerL * times },
  dosers: dosers.map((doser) => ({ ...doser, mlPerDay: doser.mlPerDay * times })),
});

/** The twin's own water and corals under a plan, with so many times its powders. */
function inTruth(ended: Scenario, { scenario }: Candidate, times: number): Scenario {
  const { topOff, dosers, waterChanges } = dosedMore(scenario, times);
  return {
    ...ended,
    days: DAYS,
    tank: { ...ended.tank, alkalinityDkh: TARGET_DKH },
    // Without limewater the top-off is whatever the keeper has: it keeps up.
    topOff:
      topOff.additive === 'none' ? { ...ended.topOff, additive: 'none', gramsPerL: 0 } : topOff,
    ...{ dosers, waterChanges },
  };
}

/** Farthest from the target of any day's mean, days 7 to 28, dKH. */
const farthest = (scenario: Scenario): number =>
  Math.max(...dailyMeans(run(scenario)).map((dkh) => Math.abs(dkh - TARGET_DKH)));

/** What a careful keeper doses who draws a line through the readings. */
function byHand(ended: Scenario, plan: Candidate, tank: Tank, useDkhPerDay: number): Scenario {
  const carrier = plan.id === 'limewater' ? 'limewater' : 'pairs';
  const { topOff, dosers } = typedPlan(
    { ...tank, carrier, dosedDkhPerDay: Math.max(0, useDkhPerDay) },
    TARGET_DKH,
  );
  const { reservoirL } = plan.scenario.topOff;
  const whole = { ...plan.scenario, topOff: { ...plan.scenario.topOff, ...topOff, reservoirL } };
  return plan.id === 'waterChanges'
    ? inTruth(ended, plan, 1)
    : inTruth(ended, { ...plan, scenario: { ...whole, dosers } }, 1);
}

/** How far plans made from the tank as it truly is stray in it: what is left is the design's own. */
export function plansFromTruth(number: number): { id: Candidate['id']; farthestDkh: number }[] {
  const draw = drawOf(number);
  const tank = drawTank(draw, carriers[number % 4]!, false);
  const { ended } = keep(draw, tank, 'plain').truth;
  const question = { now: ended, targetDkh: TARGET_DKH, giveOrTakeDkhPerDay: 0 };
  return threePlans({ ...question, kit: { scoopG: 0, pumpMlPerMin: 0 } })
    .filter(({ offered, id }) => offered && id !== 'waterChanges')
    .map((plan) => ({ id: plan.id, farthestDkh: farthest(inTruth(ended, plan, 1)) }));
}

/** Doses tried for the best odds: shares more, or less. */
const OTHER_DOSES = [-0.08, -0.05, -0.03, -0.02, -0.01, 0, 0.01, 0.02, 0.03, 0.05, 0.08];
const ASIDE = { dose: 0.02, use: 0.05 };

/** The odds of the plan with as much more, or less, as would do best by the log. */
function bestOdds({ scenario, dkh }: Candidate, now: Scenario, open: Open): number {
  const meansOf = (other: Scenario) => dayMeans(readColumn(run(other).trace, 'alkalinity_dkh'));
  const { useDkhPerDay } = scenario.corals;
  const resting = atRest(now, usualOptions);
  const means = dayMeans(dkh);
  const more = meansOf(dosedMore(scenario, 1 + ASIDE.dose));
  const aside = meansOf(resting(scenario, useDkhPerDay + ASIDE.use));
  const odds = OTHER_DOSES.map((share) => {
    const by = (i: number) => (share / ASIDE.dose) * (more[i]! - means[i]!);
    const so = {
      means: means.map((mean, i) => mean + by(i)),
      aside: aside.map((mean, i) => mean + by(i)),
    };
    return oddsOnTarget(
      { ...so, targetDkh: TARGET_DKH, useDkhPerDay, asideDkhPerDay: ASIDE.use },
      open,
    );
  });
  return Math.max(...odds);
}

/** What became of the plans that a twin's log led to; undefined when none could be made. */
export function plansOf(
  number: number,
): { plans: PlanInTruth[]; refused: number; ms: number } | undefined {
  const draw = drawOf(number);
  const tank = drawTank(draw, carriers[number % 4]!, false);
  const { truth, kept } = keep(draw, tank, 'plain');
  const answer = answerLog(kept.plan, kept.log, 0.1);
  if ('why' in answer) return undefined;
  const begun = performance.now();
  const all = threePlans(planQuestion(kept.plan, kept.log, answer, { targetDkh: TARGET_DKH }));
  const ms = performance.now() - begun;
  // Nobody plans limewater who has not typed what evaporates.
  const known = carriers[number % 4] === 'limewater';
  const offered = all.filter((plan) => plan.offered && (known || plan.id !== 'limewater'));
  const plans = offered.map((plan): PlanInTruth => {
    const scenario = inTruth(truth.ended, plan, 1);
    const off = (times: number) => heldDkh(run(inTruth(truth.ended, plan, times))) - TARGET_DKH;
    const right = plan.id === 'waterChanges' ? 1 : (doseWhere(off, 0.4, 2.5, 0.02) ?? NaN);
    return {
      ...{ id: plan.id, promisedDays: plan.promisedDays },
      farthestDkh: farthest(scenario),
      byHandFarthestDkh: farthest(byHand(truth.ended, plan, tank, byLine(tank, kept))),
      largestMoveDkh: largestMoveDkh(run(scenario)),
      allowedDkhPerDay: plan.scenario.limits.alkalinityChangeDkhPerDay,
      gramsOff: 1 / right - 1,
      odds: plan.onTargetOdds!,
      bestOdds: bestOdds(plan, answer.now, answer.fit.now),
    };
  });
  return { plans, refused: all.length - offered.length, ms };
}
