import type { Scenario } from '../../../shared/scenario/schema';
import type { Happened, Observation } from './asItHappened';
import { widthBefore } from './before';
import { doubtsOf, type Doubt } from './doubts';
import type { Square } from './leastSquares';
import type { Metals } from './metalsMoved';
import type { Model } from './model';
import { withinBounds } from './parameters';
import { pastOf, type PastLook } from './past';
import type { Jump } from './jump';
import type { Leap } from './leap';
import type { Settlement } from './robust';
import { sumOf, type Slopes } from './slopes';
import type { Restless } from './wander';

/** A fitted number and its standard error. */
export interface Estimate {
  readonly id: string;
  readonly unit: string;
  readonly value: number;
  readonly standardError: number;
  /** Its σ before the log was read; undefined when nothing was known. */
  readonly priorSigma: number | undefined;
}

/** A reading beside what the fit expects of it. */
export interface FittedPoint extends Observation {
  readonly expected: number;
  /** How far the reading is off, in σ of the readings' own scatter. */
  readonly standardised: number;
}

/** The tank when the log ends: what the forecast, the plans and the corrections begin with. */
export interface Now {
  readonly dkh: number;
  /** What life takes, by the ledger of the fitted run and what it wandered off. */
  readonly useDkhPerDay: number;
  /** What is typed for the tank to take that: its use at the saturation that the law refers to. */
  readonly typedUseDkhPerDay: number;
  /** How calcium and magnesium have moved since each was last read, by the run, mg/L. */
  readonly metalsMoved: Metals;
  /** Of: level, use, growth in % a day. */
  readonly covariance: Square;
  readonly restless: Restless;
  /** How far the use would be off with each typed number that no reading checks, one σ of it. */
  readonly doubts: readonly { readonly id: Doubt['id']; readonly useDkhPerDay: number }[];
}

export interface Fit {
  readonly startAt: string;
  readonly endH: number;
  /** A fit that did not converge gives no number. */
  readonly converged: boolean;
  readonly estimates: readonly Estimate[];
  readonly points: readonly FittedPoint[];
  readonly past: readonly PastLook[];
  /** How much wider, or closer, the readings scatter than their stated σ. */
  readonly spread: number;
  readonly now: Now;
  /** From when on the readings say that something changed. */
  readonly jump: Jump | undefined;
  /** Where the water stands elsewhere at once, in order of time. */
  readonly leaps: readonly Leap[];
  /** Corals that were noted as added or taken out. */
  readonly stockings: Happened['stockings'];
  /** Names of the reagent's lots, in the order in which they were opened; empty where it has none. */
  readonly lots: Happened['lots'];
  /** The plan as fitted, from the log's first hour, with the saturation its use refers to. */
  readonly scenario: Scenario;
}

interface Ingredients {
  readonly model: Model;
  /** Where the slopes were taken. */
  readonly values: readonly number[];
  readonly slopes: Slopes;
  readonly settlement: Settlement;
  readonly converged: boolean;
}

/** The run, its slopes and what the readings left over, put together. */
export function fitted({ model, values, slopes, settlement, converged }: Ingredients): Fit {
  const { parameters, happened } = model;
  const { covariance, spread, errors } = settlement;
  const best = withinBounds(parameters, values, settlement.mean);
  const scenario = model.scenarioFor(best);
  const { omegaReference } = model.course(values).settled;
  const points = happened.observations.map((observation, i) => ({
    ...observation,
    expected: observation.value - errors[i]!.mean,
    standardised: errors[i]!.mean / (observation.sigma * spread),
  }));
  return {
    ...{ startAt: happened.startAt, endH: happened.endH, converged, spread, points },
    estimates: parameters.map((parameter, i) => ({
      ...{ id: parameter.id, unit: parameter.unit, value: best[i]! },
      standardError: Math.sqrt(covariance[i]![i]!),
      priorSigma: widthBefore(parameter),
    })),
    past: pastOf(model, values, points, errors),
    now: nowOf(model, values, best, slopes, settlement),
    jump: settlement.jump,
    leaps: happened.leaps.map((leap, index) => ({
      ...leap,
      byDkh: best[parameters.findIndex((one) => one.leap === index)]!,
    })),
    ...{ stockings: happened.stockings, lots: happened.lots },
    scenario: { ...scenario, start: { ...scenario.start, omegaReference } },
  };
}

function nowOf(
  model: Model,
  values: readonly number[],
  best: readonly number[],
  slopes: Slopes,
  settlement: Settlement,
): Now {
  const { parameters } = model;
  const course = model.course(values);
  const ofLevel = [...slopes.endDkh, 0, 1];
  const ofUse = [...slopes.use, 1, 0];
  const ofGrowth = [...parameters.map(({ id }) => (id === 'growth' ? 1 : 0)), 0, 0];
  const rows = [ofLevel, ofUse, ofGrowth];
  const scenario = model.scenarioFor(values);
  const useDkhPerDay = course.useDkhPerDay + sumOf(ofUse, settlement.mean);
  const byLawDkhPerDay = course.useDkhPerDay + sumOf(slopes.use, settlement.mean);
  return {
    dkh: course.endDkh + sumOf(ofLevel, settlement.mean),
    ...{ useDkhPerDay, metalsMoved: course.metalsMoved },
    typedUseDkhPerDay: typedFor(useDkhPerDay, byLawDkhPerDay, model.typedAtEnd(best)),
    covariance: rows.map((a, i) =>
      rows.map((b, k) =>
        i <= k ? crossed(a, b, settlement.covariance) : crossed(b, a, settlement.covariance),
      ),
    ),
    restless: settlement.restless,
    doubts: doubtsOf(scenario, model.happened.poured).map(({ id, sigma, more }) => {
      const there = model.run(scenario, values, (one) => more(one, sigma));
      const answer = settlement.answerTo(course.water.map((value, i) => value - there.water[i]!));
      const moved = there.useDkhPerDay - course.useDkhPerDay;
      return { id, useDkhPerDay: moved + sumOf(ofUse, answer) };
    }),
  };
}

/** Corals that have all but stopped say little of what they take elsewhere. */
const LEAST_FACTOR = 0.2;

/** Of a tank that takes less, or more, than by its law, where the law has made so much of what was typed. */
function typedFor(takenDkhPerDay: number, byLawDkhPerDay: number, typedDkhPerDay: number): number {
  const factor = typedDkhPerDay > 0 ? byLawDkhPerDay / typedDkhPerDay : 1;
  return Math.max(0, takenDkhPerDay) / Math.max(LEAST_FACTOR, factor);
}

/** aCbᵀ: how two things that move with the same unknowns move together. */
const crossed = (a: readonly number[], b: readonly number[], c: Square): number =>
  a.reduce((sum, x, i) => sum + b.reduce((s, y, k) => s + x * c[i]![k]! * y, 0), 0);
