import type { Bought, Gain } from '../../../shared/verdict/bought';
import type { Line, LineQuantity } from '../../../shared/verdict/lines';
import type { Candidate } from './candidates';
import { bare, HARM, reachOf } from './leading';
import { causedLines, isLevel, outsideOf, passedH, SAME_H, worstOf, type Course } from './passing';

/** Changes smaller than these no keeper can read off (common practice). */
const LEAST: Partial<Record<LineQuantity, number>> = {
  ...{ alkalinity: 0.1, ph: 0.02, calcium: 5, magnesium: 10, salinity: 0.1, temperature: 0.1 },
  ...{ oxygen: 0.1, ammonia: 0.001, volume: 0.1 },
};
/** What is gained is worth a word from these shares on: of the time there was, of the way beyond. */
const LEAST_SHARE = 0.02;
const LEAST_PART = 0.1;
/** Back sooner than this is worth a word, h. */
const LEAST_OUTSIDE_H = 0.25;
/** A line may come sooner by so much before an act is called worse: minutes, and of the time there is. */
const SOONER_H = 1 / 30;
const SOONER_SHARE = 0.01;

/** What may be left undone: it has no excuse for any line that it passes. */
const OPTIONAL: readonly string[] = ['carbonatedWater', 'changeInSteps', 'aerate'];

interface Compared {
  readonly candidates: readonly Candidate[];
  readonly before: readonly Course[];
  readonly after: readonly Course[];
  /** When the first thing broke, and when the act begins, h of the trial. */
  readonly fromH: number;
  readonly actH: number;
  /** What is passed first if nothing is done. */
  readonly leading: Line | undefined;
}

/** How far a worst value is on the good side of another. */
const better = ({ trouble }: Line, without: number, withIt: number): number =>
  trouble === 'above' ? without - withIt : withIt - without;

/** By how many hours an act brings a line sooner; 0 where that is within what a run can tell. */
function soonerH(before: Course, after: Course, id: string, { fromH, actH }: Compared): number {
  const [without, withIt] = [passedH(before, id, actH), passedH(after, id, actH)];
  const by = without - withIt;
  if (withIt === Infinity || !(by > 0)) return 0;
  const slack = without === Infinity ? 0 : (without - fromH) * SOONER_SHARE;
  return by > Math.max(SOONER_H, slack) ? by : 0;
}

/** The farthest beyond a line in the tank that goes farthest. */
const farthestOf = (courses: readonly Course[], { id, trouble }: Line): number =>
  (trouble === 'above' ? Math.max : Math.min)(...courses.map((course) => worstOf(course, id)));

/** Whether a line is passed later by as much as is worth a word. */
function isLater(without: number, withIt: number, fromH: number): boolean {
  return withIt - without > Math.max(SAME_H, LEAST_SHARE * (without - fromH));
}

/** The gain on a line that is passed already when the act begins. */
function gainOf(line: Line, before: Course, after: Course): Gain {
  const [without, withIt] = [worstOf(before, line.id), worstOf(after, line.id)];
  const least = Math.max(
    LEAST[line.quantity] ?? Infinity,
    LEAST_PART * Math.abs(without - line.limit),
  );
  if (better(line, without, withIt) >= least) return 'lower';
  const outsideH = outsideOf(before, line.id);
  const shorterH = outsideH - outsideOf(after, line.id);
  return shorterH >= Math.max(LEAST_OUTSIDE_H, LEAST_PART * outsideH) ? 'shorter' : 'nothing';
}

interface Moved {
  readonly line: Line;
  readonly gain: Gain;
}

/** A line that is passed later than this matters less than one that is passed already, h. */
const SOON_H = 48;

/** The first line of one tank that an act moves, what leads before the others. */
function movedIn(
  lines: readonly Line[],
  before: Course,
  after: Course,
  { fromH, actH }: Compared,
): Moved | undefined {
  const ahead = lines.flatMap((line): (Moved & { withoutH: number })[] => {
    const without = passedH(before, line.id, actH);
    if (without <= actH + SAME_H || without === Infinity) return [];
    const withIt = passedH(after, line.id, actH);
    if (withIt === Infinity) return [{ line, gain: 'kept', withoutH: without }];
    const isGain = isLater(without, withIt, fromH);
    return isGain ? [{ line, gain: 'later', withoutH: without }] : [];
  });
  const passed = lines
    .filter(({ id }) => passedH(before, id, actH) <= actH + SAME_H)
    .map((line): Moved => ({ line, gain: gainOf(line, before, after) }));
  return (
    ahead.find(({ withoutH }) => withoutH <= actH + SOON_H) ??
    passed.find(({ gain }) => gain !== 'nothing') ??
    ahead[0] ??
    (lines[0] && { line: lines[0], gain: 'nothing' })
  );
}

/** Looked for in the tank as it is set, and in the others where that one passes nothing; `tank` is the one that tells. */
function moved(compared: Compared): (Moved & { readonly tank: number }) | undefined {
  const { candidates, before, after, actH, leading } = compared;
  for (const [i, course] of before.entries()) {
    // What the tank as it is set is beyond already, another tank's gain says nothing of.
    const isAhead = ({ id }: Line) => i === 0 || passedH(before[0]!, id, actH) > actH + SAME_H;
    const caused = causedLines(course, candidates[i]!.undisturbed).filter(isAhead);
    const lines = [
      ...caused.filter(({ id }) => id === leading?.id),
      ...caused.filter(({ id }) => id !== leading?.id),
    ];
    const found = movedIn(lines, course, after[i]!, compared);
    if (found) return { ...found, tank: i };
  }
  return undefined;
}

/** Hours of an act within which what it brings is of the first hours. */
const FIRST_H = 24;

/** A line that an act brings sooner in some tank, and whether that may not be. */
function costOf(id: string, compared: Compared, own: Line | undefined) {
  const { before, after, fromH, actH, leading } = compared;
  let costs: Bought<string>['costs'];
  let isWorse = false;
  for (const [i, course] of before.entries()) {
    for (const line of course.lines.filter(isLevel)) {
      const by = soonerH(course, after[i]!, line.id, compared);
      if (by === 0) continue;
      if (line.id === own?.id || OPTIONAL.includes(id)) isWorse = true;
      if (line.id !== leading?.id && !HARM.includes(line.id)) continue;
      const [without, withIt] = [course, after[i]!].map((one) => passedH(one, line.id, actH));
      if (withIt! > actH + FIRST_H) continue;
      // Of all the tanks that this may be, the one in which it comes soonest.
      if (costs && costs.withItH <= withIt! - fromH) continue;
      costs = {
        line: bare(line),
        withoutH: without === Infinity ? undefined : without! - fromH,
        withItH: withIt! - fromH,
      };
    }
    if (!own) continue;
    const gained = better(own, worstOf(course, own.id), worstOf(after[i]!, own.id));
    if (gained < -(LEAST[own.quantity] ?? 0)) isWorse = true;
  }
  return { costs, isWorse };
}

/** Hours gained in the tank that gains least and in the one that gains most, each against itself. */
function gainedIn(id: string, { before, after, actH }: Compared): readonly [number, number] {
  const hours = before.flatMap((course, i) => {
    const without = passedH(course, id, actH);
    return without === Infinity ? [] : [Math.max(0, passedH(after[i]!, id, actH) - without)];
  });
  return hours.length === 0 ? [0, 0] : [Math.min(...hours), Math.max(...hours)];
}

/**
 * What an act buys, from runs that differ in nothing else; 'worse' where it must not be offered;
 * undefined where the failure passes no line at all.
 */
export function bought<Id extends string>(
  act: Id,
  compared: Compared,
): Bought<Id> | 'worse' | undefined {
  const { before, after, fromH, actH } = compared;
  const found = moved(compared);
  const { costs, isWorse } = costOf(act, compared, found?.line);
  if (isWorse || (costs && (found?.gain ?? 'nothing') === 'nothing')) return 'worse';
  if (!found) return undefined;
  const { line, gain, tank } = found;
  const reach = (courses: readonly Course[]) => reachOf(courses, line.id, actH, fromH);
  const [without, withIt] = [reach(before), reach(after)];
  return {
    ...{ act, gain, line: bare(line), before: without, after: withIt, costs },
    gainedH: gainedIn(line.id, compared),
    worst: [worstOf(before[0]!, line.id), worstOf(after[0]!, line.id)],
    farthest: [farthestOf(before, line), farthestOf(after, line)],
    gainsAsSet: tank === 0,
    outsideH: [outsideOf(before[tank]!, line.id), outsideOf(after[tank]!, line.id)],
  };
}
