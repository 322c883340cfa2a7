import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import { passedAnyway } from '../../../shared/verdict/anyway';
import { lineOf, passed, type LineResult } from '../../../shared/verdict/lineResult';
import { watchedLines, type Line, type LineQuantity } from '../../../shared/verdict/lines';
import type { Run } from '../../engine/run';
import { TrialRun } from '../../engine/trialRun';
import type { Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';

/** Moments nearer than this are the same, h. */
export const SAME_H = 1 / 60;

/** How fast something moves, and saturation, say nothing of how long there is. */
const NOT_A_LEVEL: readonly LineQuantity[] = ['phChange', 'alkalinityChange', 'omega'];

export const isLevel = ({ quantity }: Pick<Line, 'quantity'>): boolean =>
  !NOT_A_LEVEL.includes(quantity);

/** One course of a failure: when each line is passed, with the same tank undisturbed beside it. */
export interface Course {
  readonly run: Run;
  readonly lines: readonly LineResult[];
}

/** The same plan with nothing failing and nobody answering. */
export const undisturbed = (scenario: Scenario): Scenario => ({
  ...scenario,
  faults: [],
  responses: [],
});

/** Runs a failure from where its tank settles; the lines count from a moment of the trial. */
export function courseOf(
  scenario: Scenario,
  options: SimulationOptions,
  start: Settled,
  fromH = firstFaultH(scenario),
): Course {
  const trial = new TrialRun(scenario, options, { lines: watchedLines(scenario), fromH }, start);
  trial.advance(Infinity);
  const run = trial.result();
  return { run, lines: run.lines };
}

/** When a line is beyond its limit first, from a moment on; Infinity when it never is. */
export function passedH({ run }: Course, id: string, fromH: number): number {
  const own = run.crossings.filter(({ limit }) => limit === id);
  const before = own.findLast(({ timeH }) => timeH <= fromH + 1e-9);
  if (before?.into === 'outside') return fromH;
  return own.find(({ timeH, into }) => timeH > fromH && into === 'outside')?.timeH ?? Infinity;
}

/** The lines that a failure passes, and is to blame for; the first first. */
export function causedLines(course: Course, undisturbed: Course): LineResult[] {
  const anyway = passedAnyway(course.lines, undisturbed.lines);
  return passed(course.lines)
    .filter((line) => isLevel(line) && !line.already && !anyway.includes(line))
    .sort((a, b) => a.firstH! - b.firstH!);
}

/** The farthest beyond a line, and the hours outside it. */
export const worstOf = ({ lines }: Course, id: string): number => lineOf(lines, id).worst;
export const outsideOf = ({ lines }: Course, id: string): number => lineOf(lines, id).outsideH;
