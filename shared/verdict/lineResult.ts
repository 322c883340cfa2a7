import type { Line } from './lines';

/** How one line fared from a moment on: in a drill, that at which the first thing broke. */
export interface LineResult extends Line {
  /** First moment beyond it, h of the trial; undefined when it was kept. */
  readonly firstH: number | undefined;
  /** Whether it was passed before that moment. */
  readonly already: boolean;
  /** The farthest towards trouble, of every step and every sudden event. */
  readonly worst: number;
  readonly worstH: number;
  readonly outsideH: number;
  /** When it was back for good; undefined when it was not, or never left. */
  readonly backH: number | undefined;
}

/** The lines that were passed. */
export const passed = (lines: readonly LineResult[]): readonly LineResult[] =>
  lines.filter(({ firstH }) => firstH !== undefined);

/** One line by its id; one that nobody watches is a mistake of ours. */
export function lineOf(lines: readonly LineResult[], id: string): LineResult {
  const found = lines.find((line) => line.id === id);
  if (!found) throw new RangeError(`No line '${id}' was watched.`);
  return found;
}
