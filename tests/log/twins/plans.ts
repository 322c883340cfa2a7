import type { Scenario } from '../../../shared/scenario/schema';
import { answerLog } from '../../../workers/studies/answerLog';
import { run } from '../../../workers/engine/run';
import { dailyMeans, heldDkh, largestMoveDkh } from '../../../workers/studies/plan/holding';
import { doseWhere } from '../../../workers/studies/plan/root';
import { threePlans, type Candidate } from '../../../workers/studies/plan/threePlans';
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
}

/** The twin's own water and corals under a plan, with so many times its powders. */
function inTruth(ended: Scenario, { scenario }: Candidate, times: number): Scenario {
  const { topOff, dosers, waterChanges } = scenario;
  return {
    ...ended,
    days: DAYS,
    tank: { ...ended.tank, alkalinityDkh: TARGET_DKH },
    // Without limewater the top-off is whatever the keeper has: it keeps up.
    topOff:
      topOff.additive === 'none'
        ? { ...ended.topOff, additive: 'none', gramsPerL: 0 }
        : { ...topOff, gramsPerL: topOff.gramsPerL * times },
    dosers: dosers.map((doser) => ({ ...doser, mlPerDay: doser.mlPerDay * times })),
    waterChanges,
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
  const all = threePlans({
    ...{ now: answer.now, targetDkh: TARGET_DKH, kit: { scoopG: 0, pumpMlPerMin: 0 } },
    giveOrTakeDkhPerDay: 2 * answer.useNow.standardErrorDkhPerDay,
  });
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
    };
  });
  return { plans, refused: all.length - offered.length, ms };
}
