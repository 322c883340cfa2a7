import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import { seasonQuantities } from '../season/quantity';
import type { Replay } from './replay';

/** So much farther nobody can tell: a test's repeat, a probe's reading; of all else a share of the limit. */
const UNTOLD: Partial<Record<LineResult['quantity'], number>> = {
  ...{ alkalinity: 0.15, alkalinityChange: 0.03, ph: 0.1 },
};
const UNTOLD_SHARE = 0.005;

const farther = ({ trouble }: LineResult, by: number, than: number): number =>
  trouble === 'above' ? by - than : than - by;

/** Lines that are passed anyway, and farther so; of alkalinity within so many hours. */
export function fartherOut(run: Replay, alone: Replay, alkalinityWithinH: number): LineResult[] {
  return run.lines.filter((line) => {
    const { id, quantity, worst, limit, trouble } = line;
    const before = lineOf(alone.lines, id);
    const isOwn = seasonQuantities.some((own) => own.id === quantity);
    if (isOwn || line.firstH === undefined || before.firstH === undefined) return false;
    const untold = UNTOLD[quantity] ?? UNTOLD_SHARE * Math.abs(limit);
    if (quantity !== 'alkalinity') return farther(line, worst, before.worst) > untold;
    const extreme = trouble === 'above' ? Math.max : Math.min;
    const within = ({ dkh }: Replay) => extreme(...dkh.slice(0, alkalinityWithinH + 1));
    return farther(line, within(run), extreme(limit, within(alone))) > untold;
  });
}
