import { localTimeOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { plannedEvents } from '../../../workers/engine/plannedEvents';
import { ended, stateAfter } from '../../../workers/engine/run';
import { usualOptions } from '../../../workers/engine/simulation';
import type { TankState } from '../../../workers/engine/tankState';
import { answerLog, type LogAnswer } from '../../../workers/studies/answerLog';
import { dayMeans } from '../../../workers/studies/dayMeans';
import type { RanUntil } from '../../../workers/studies/fit/turnedAt';
import { planQuestion } from '../../../workers/studies/plan/planQuestion';
import { threePlans, type Candidate } from '../../../workers/studies/plan/threePlans';
import { turn } from '../../../workers/studies/turn/turn';
import { drawOf, type Draw } from './draw';
import { byLine, keep, START_H, type Kept } from './keeper';
import { carriers, drawTank, typedPlan, type Tank } from './tank';

const DAYS = 28;
const RESTED_DAYS = 7;

/** What became of a plan whose keeper does what is said. */
export interface Followed {
  readonly id: Candidate['id'];
  /** Farthest from the target of any day's mean, days 7 to 28, dKH. */
  readonly farthestDkh: number;
  /** The same plan, never looked at again. */
  readonly leftAloneDkh: number;
  /** Tested on the same days, dosed by the last two readings. */
  readonly byHandDkh: number;
  /** Days on which a test was asked for. */
  readonly tests: readonly number[];
  readonly turns: number;
  readonly means: readonly number[];
}

/** The twin's true water, hour by hour, with whatever is dosed. */
class Water {
  readonly dkh: number[] = [];
  private state: TankState;

  constructor(private readonly truth: Scenario) {
    this.state = stateAfter({ ...truth, days: 0 });
  }

  /** A plan's dosing in this water. */
  dosed({ topOff, dosers, waterChanges }: Scenario): Scenario {
    const plain = { ...this.truth.topOff, additive: 'none' as const, gramsPerL: 0 };
    const own = topOff.additive === 'none' ? plain : topOff;
    return { ...this.truth, days: DAYS, dosers, waterChanges, topOff: own };
  }

  goOn(plan: Scenario, additions: Scenario['additions'], untilDay: number): void {
    const scenario = { ...this.dosed(plan), additions, days: untilDay };
    const trial = ended(scenario, usualOptions, this.state);
    const hours = readColumn(trial.result().trace, 'alkalinity_dkh');
    this.dkh.push(...hours.subarray(this.dkh.length > 0 ? 1 : 0));
    this.state = trial.state();
  }
}

const farthest = (dkh: readonly number[], targetDkh: number): number =>
  Math.max(
    ...dayMeans(dkh)
      .slice(RESTED_DAYS)
      .map((mean) => Math.abs(mean - targetDkh)),
  );

interface Twin {
  readonly draw: Draw;
  readonly tank: Tank;
  readonly kept: Kept;
  readonly truth: Scenario;
  readonly answer: LogAnswer;
  readonly targetDkh: number;
}

/** Each plan that is offered to hold the water where it stands, followed for four weeks. */
export function followed(number: number): Followed[] | undefined {
  const draw = drawOf(number);
  const tank = drawTank(draw, carriers[number % 4]!, false);
  const { truth, kept } = keep(draw, tank, 'plain');
  const answer = answerLog(kept.plan, kept.log, 0.1);
  if ('why' in answer) return undefined;
  const targetDkh = Math.round(answer.fit.now.dkh * 10) / 10;
  const plans = threePlans(planQuestion(kept.plan, kept.log, answer, { targetDkh }));
  const known = carriers[number % 4] === 'limewater';
  const offered = plans.filter(({ offered, id }) => offered && id !== 'waterChanges');
  const twin = { draw, tank, kept, truth: truth.ended, answer, targetDkh };
  return offered
    .filter(({ id }) => known || id !== 'limewater')
    .map((plan) => {
      const { water, tests, turns } = follow(twin, plan);
      const alone = new Water(truth.ended);
      alone.goOn(plan.scenario, [], DAYS);
      return {
        ...{ id: plan.id, tests, turns, means: dayMeans(water.dkh) },
        farthestDkh: farthest(water.dkh, targetDkh),
        leftAloneDkh: farthest(alone.dkh, targetDkh),
        byHandDkh: farthest(byHand(twin, plan, tests), targetDkh),
      };
    });
}

const dosing = ({ topOff, dosers, waterChanges, calciumReactor }: Scenario) => ({
  ...{ topOff, dosers, waterChanges, calciumReactor },
});

/** Tests on the days that are asked for, and turns what is said. */
function follow({ draw, tank, kept, truth, targetDkh }: Twin, { scenario }: Candidate) {
  const water = new Water(truth);
  const beganH = Math.floor(hoursAtEnd(kept));
  const at = (day: number) => localTimeOf(START_H + beganH + day * 24);
  const log: Reading[] = [...kept.log];
  const ran: RanUntil[] = [...kept.ran, { until: kept.log.at(-1)!.at, plan: kept.plan }];
  let plan: Scenario = { ...kept.plan, ...dosing(scenario) };
  // What is changed by plan is changed in this water, and written down.
  const changes = plannedEvents({ ...water.dosed(plan), additions: [] }).map(({ timeH }) => timeH);
  let later: { day: number; plan: Scenario } | undefined;
  let additions: Scenario['additions'] = [];
  const tests: number[] = [];
  let turns = 0;
  let day = 0;
  const goTo = (until: number) => {
    if (later && later.day <= until) {
      const { day: atDay, plan: next } = later;
      later = undefined;
      goTo(atDay);
      ran.push({ until: at(atDay), plan });
      plan = next;
    }
    water.goOn(plan, additions, until);
    const { percent } = plan.waterChanges;
    const done = changes.filter((timeH) => timeH > day * 24 && timeH <= until * 24);
    log.push(...done.map((timeH) => ({ at: at(timeH / 24), waterChangePercent: percent })));
    const clock = truth.start.clockHour;
    for (const { day: nth, hour, additive, grams } of additions) {
      const timeH = (nth - 1) * 24 + hour - clock;
      if (timeH > day * 24 && timeH <= until * 24)
        log.push({ at: at(timeH / 24), additive, grams });
    }
    log.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
    day = until;
  };
  for (;;) {
    const answer = answerLog(plan, log, 0.1, usualOptions, ran);
    if ('why' in answer) throw new Error(answer.why);
    const next = day + Math.max(1, Math.round(answer.nextTest.inDays));
    if (next >= DAYS) break;
    goTo(next);
    tests.push(next);
    const alkalinityDkh = Number((water.dkh.at(-1)! + tank.sigmaDkh * draw.normal()).toFixed(2));
    log.push({ at: at(next), alkalinityDkh });
    const read = answerLog(plan, log, 0.1, usualOptions, ran);
    if ('why' in read) throw new Error(read.why);
    const told = turn({ ...planQuestion(plan, log, read, { targetDkh }), plan });
    if (told.kind !== 'turn') continue;
    const { turned } = told;
    if (turned.to === turned.from && turned.first.kind === 'none') continue;
    turns++;
    ran.push({ until: at(next), plan });
    plan = { ...plan, ...dosing(turned.plan) };
    const { first } = turned;
    later =
      first.kind === 'less'
        ? { day: next + first.days, plan: { ...plan, ...dosing(turned.heldPlan) } }
        : undefined;
    // Counted from the day of the reading: put where this run's days are.
    additions = turned.scenario.additions.map((one) => ({ ...one, day: one.day + next }));
  }
  goTo(DAYS);
  return { water, tests, turns };
}

const hoursAtEnd = ({ log }: Kept): number => {
  const last = log.at(-1)!.at;
  return (Date.parse(`${last}Z`) - Date.parse(`${localTimeOf(START_H)}Z`)) / 3_600_000;
};

/** New dose = old dose − what it rose in a day between the last two readings, and the gap within a week. */
function byHand(
  { draw, tank, kept, truth, targetDkh }: Twin,
  { id, scenario }: Candidate,
  tests: readonly number[],
): number[] {
  const water = new Water(truth);
  const carrier = id === 'limewater' ? 'limewater' : 'pairs';
  const planFor = (dosedDkhPerDay: number): Scenario => {
    const { topOff, dosers } = typedPlan({ ...tank, carrier, dosedDkhPerDay }, targetDkh);
    const { reservoirL } = scenario.topOff;
    return { ...scenario, dosers, topOff: { ...scenario.topOff, ...topOff, reservoirL } };
  };
  let dose = Math.max(0, byLine(tank, kept));
  let last = { day: 0, dkh: kept.log.findLast((one) => one.alkalinityDkh)!.alkalinityDkh! };
  for (const day of [...tests, DAYS]) {
    water.goOn(planFor(dose), [], day);
    const dkh = water.dkh.at(-1)! + tank.sigmaDkh * draw.normal();
    const rose = (dkh - last.dkh) / (day - last.day);
    dose = Math.max(0, dose - rose + (targetDkh - dkh) / 7);
    last = { day, dkh };
  }
  return water.dkh;
}
