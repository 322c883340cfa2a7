import { passed, type LineResult } from './lineResult';

/** A line that the failure takes this much farther beyond is passed because of it. */
const FARTHER = 1.1;

/** How far a line was passed at the worst, in its own unit. */
const beyond = ({ worst, limit }: LineResult): number => Math.abs(worst - limit);

/**
 * The lines passed since a failure that the same plan passes about as far with nothing failing:
 * the failure is not to blame for them. `undisturbed` are the plan's lines from the same moment.
 */
export function passedAnyway(
  lines: readonly LineResult[],
  undisturbed: readonly LineResult[],
): readonly LineResult[] {
  const without = new Map(passed(undisturbed).map((line) => [line.id, line]));
  return passed(lines).filter((line) => {
    const same = without.get(line.id);
    return !line.already && same !== undefined && beyond(line) <= beyond(same) * FARTHER;
  });
}
