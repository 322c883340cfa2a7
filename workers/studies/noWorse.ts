import { lineOf, type LineResult } from '../../shared/verdict/lineResult';
import type { Outcome } from '../../shared/verdict/outcome';

/** The same moment and the same level, run twice. */
const SAME = 1e-9;

/** Whether a line that is passed was passed before too, no later and as far. */
function isKeptAsWell(before: LineResult, after: LineResult): boolean {
  if (after.firstH === undefined) return true;
  if (before.firstH === undefined || after.firstH < before.firstH - SAME) return false;
  const farther =
    after.trouble === 'above' ? after.worst - before.worst : before.worst - after.worst;
  return farther <= SAME;
}

/** Whether a run keeps every watched line at least as well as another: none new, none sooner, none farther. */
export const noWorse = (before: Outcome, after: Outcome): boolean =>
  (after.stopped === undefined || before.stopped !== undefined) &&
  after.lines.every((line) => isKeptAsWell(lineOf(before.lines, line.id), line));
