import type { FirstPassed, Reach } from '../../../shared/verdict/bought';
import type { Line } from '../../../shared/verdict/lines';
import type { Candidate } from './candidates';
import { causedLines, passedH, type Course } from './passing';

/** Where animals are harmed, or people. */
export const HARM: readonly string[] = [
  ...['phHarm', 'alkalinityHarm', 'temperatureHarm', 'oxygenLow', 'oxygenHarm'],
  ...['ammonia', 'overflow'],
];
/** What comes before harm, of what does it within hours. */
const TOWARDS_HARM: readonly string[] = ['phHigh', 'phLow', 'temperatureHigh', 'temperatureLow'];

export const bare = ({ id, quantity, trouble, limit }: Line): Line => ({
  ...{ id, quantity, trouble, limit },
});

/** When a line is passed over the tanks, h from when the first thing broke. */
export function reachOf(
  courses: readonly Course[],
  id: string,
  sinceH: number,
  fromH: number,
): Reach {
  const hours = courses.map((course) => passedH(course, id, sinceH) - fromH);
  const known = (hour: number) => (hour === Infinity ? undefined : hour);
  return {
    soonestH: known(Math.min(...hours)),
    asSetH: known(hours[0]!),
    latestH: known(Math.max(...hours)),
  };
}

/**
 * What is passed first: oxygen where there is no power, else what comes first in the tank as set; and
 * where that harms nobody, the first that does or comes before harm.
 */
export function leadingOf(
  candidates: readonly Pick<Candidate, 'undisturbed'>[],
  courses: readonly Course[],
  isCut: boolean,
  fromH: number,
): FirstPassed | undefined {
  const caused = courses.map((course, i) => causedLines(course, candidates[i]!.undisturbed));
  const oxygen = caused.flat().find(({ id }) => id === 'oxygenLow');
  const first = (isCut && oxygen) || caused.find((lines) => lines.length > 0)?.[0];
  if (!first) return undefined;
  const told = (line: Line) => ({
    ...{ line: bare(line), reach: reachOf(courses, line.id, fromH, fromH) },
  });
  const among = (lines: readonly Line[]): Line | undefined =>
    lines.find(({ id }) => HARM.includes(id)) ??
    (TOWARDS_HARM.includes(first.id)
      ? undefined
      : lines.find(({ id }) => TOWARDS_HARM.includes(id)));
  const graver = HARM.includes(first.id) ? undefined : (among(caused[0]!) ?? among(caused.flat()));
  return { ...told(first), graver: graver && told(graver) };
}
