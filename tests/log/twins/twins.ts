import { median } from 'd3-array';
import { hoursOf } from '../../../shared/log/localTime';
import { judge } from '../../../shared/log/judge';
import { lotOffsetOf } from '../../../shared/log/lotOffset';
import { USUAL_ACCURACY_DKH } from '../../../shared/log/reading';
import { usualOptions } from '../../../workers/engine/simulation';
import { answerLog, type LogAnswer } from '../../../workers/studies/answerLog';
import { drawOf } from './draw';
import { byLine, keep, START_H, type Kept } from './keeper';
import { carriers, drawTank, type Carrier } from './tank';
import type { Truth } from './truth';
import type { Variant } from './variants';

/** What became of one twin. */
export interface Twin {
  readonly stuck: boolean;
  readonly errorDkhPerDay: number;
  readonly lineErrorDkhPerDay: number;
  /** Whether the 95 % interval of the readings alone holds the truth. */
  readonly held: boolean;
  /** Whether the one that allows for typed numbers does, or the page says that something changed. */
  readonly heldOrSaid: boolean;
  /** Whether each of the fourteen readings that followed lies in the fan. */
  readonly inFan: readonly boolean[];
  readonly ms: number;
}

/** The twins of one variant, together. */
export interface Twins {
  readonly variant: Variant;
  readonly count: number;
  readonly stuck: number;
  readonly held: number;
  readonly heldOrSaid: number;
  readonly medianErrorDkhPerDay: number;
  readonly lineMedianErrorDkhPerDay: number;
  readonly inFanFirstWeek: number;
  readonly inFanSecondWeek: number;
  readonly ms: readonly number[];
  /** Of each twin, dKH/day. */
  readonly errors: readonly number[];
  readonly lineErrors: readonly number[];
}

/** Of seventeen variants: five thousand one hundred in all. */
export const TWINS_OF_A_VARIANT = 300;

const K = 1.96;

/** What nobody can have switched off by mistake, or turned, has no pump. */
const pumped: readonly Carrier[] = ['limewater', 'pairs'];

const needsPump: readonly Variant[] = ['pump off, unlogged', 'dosing changed and said'];

const carrierOf = (number: number, variant: Variant): Carrier =>
  needsPump.includes(variant) ? pumped[number % 2]! : carriers[number % 4]!;

/** The keeper goes on reading from the bottle that is open. */
function inFan(
  { fan, fit }: LogAnswer,
  { later }: Truth,
  { open }: Kept,
  normals: readonly number[],
  sigma: number,
) {
  return later.map(({ timeH, dkh }, day) => {
    const read = {
      dkh: dkh + open.byDkh + sigma * normals[day]!,
      sigmaDkh: USUAL_ACCURACY_DKH * fit.spread,
      timeH: timeH + START_H - hoursOf(fit.startAt),
      lot: lotOffsetOf(fit, open.lot),
    };
    const judged = judge(read, fan);
    return judged !== undefined && Math.abs(judged.standardised) <= K;
  });
}

/** The twin of that number: the tank in truth, its log, and what is made of it. */
export function twin(number: number, variant: Variant): Twin {
  const draw = drawOf(number);
  const tank = drawTank(draw, carrierOf(number, variant), variant === 'five readings');
  const { truth, kept } = keep(draw, tank, variant);
  const normals = truth.later.map(() => draw.normal());
  const begun = performance.now();
  const answer = answerLog(kept.plan, kept.log, 0.1, usualOptions, kept.ran);
  const ms = performance.now() - begun;
  const lineErrorDkhPerDay = Math.abs(byLine(tank, kept, truth.turned?.times) - truth.useDkhPerDay);
  if ('why' in answer) {
    const nothing = { held: false, heldOrSaid: false, inFan: [], errorDkhPerDay: Infinity };
    return { ...nothing, stuck: true, lineErrorDkhPerDay, ms };
  }
  const { dkhPerDay, standardErrorDkhPerDay, withDoubtsDkhPerDay } = answer.useNow;
  const errorDkhPerDay = Math.abs(dkhPerDay - truth.useDkhPerDay);
  return {
    ...{ stuck: false, errorDkhPerDay, lineErrorDkhPerDay, ms },
    held: errorDkhPerDay <= K * standardErrorDkhPerDay,
    heldOrSaid: errorDkhPerDay <= K * withDoubtsDkhPerDay || answer.fit.jump !== undefined,
    inFan: inFan(answer, truth, kept, normals, tank.sigmaDkh),
  };
}

const shareOf = (all: readonly boolean[]): number => all.filter(Boolean).length / all.length;

/** So many twins of a variant. */
export function twins(count: number, variant: Variant): Twins {
  const all = Array.from({ length: count }, (_, number) => twin(number, variant));
  return {
    ...{ variant, count },
    stuck: all.filter(({ stuck }) => stuck).length,
    held: shareOf(all.map(({ held }) => held)),
    heldOrSaid: shareOf(all.map(({ heldOrSaid }) => heldOrSaid)),
    medianErrorDkhPerDay: median(all, ({ errorDkhPerDay }) => errorDkhPerDay)!,
    lineMedianErrorDkhPerDay: median(all, ({ lineErrorDkhPerDay }) => lineErrorDkhPerDay)!,
    inFanFirstWeek: shareOf(all.flatMap((one) => one.inFan.slice(0, 7))),
    inFanSecondWeek: shareOf(all.flatMap((one) => one.inFan.slice(7))),
    ms: all.map(({ ms }) => ms),
    errors: all.map(({ errorDkhPerDay }) => errorDkhPerDay),
    lineErrors: all.map(({ lineErrorDkhPerDay }) => lineErrorDkhPerDay),
  };
}
