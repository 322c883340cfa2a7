import type { Scenario } from '../../../shared/scenario/schema';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { run, type Run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';

/** A run with every limit that it passes. */
export interface Watched {
  readonly run: Run;
  readonly breaches: readonly LineResult[];
}

export type Watch = (scenario: Scenario) => Watched;

/** How the tank fares as it runs today: a plan may not take it any farther outside. */
export type Today = readonly LineResult[];

/** What is outside already may move by as little as nobody can tell: a probe's reading, a pump's phase. */
const untold = ({ quantity, limit }: LineResult): number =>
  quantity === 'ph' ? 0.1 : 0.005 * Math.abs(limit);

const beyond = ({ trouble, limit }: LineResult, value: number): number =>
  trouble === 'above' ? value - limit : limit - value;

/** Whether a line is kept, or passed no farther than it is today. */
export function stillInside(line: LineResult, today: Today): boolean {
  if (line.firstH === undefined) return true;
  const before = today.find(({ id, firstH }) => id === line.id && firstH !== undefined);
  if (!before) return false;
  return beyond(line, line.worst) <= beyond(line, before.worst) + untold(line);
}

/** Runs, and tells what is passed and was not passed as far today. */
export const watching =
  (options: SimulationOptions, today: Today = []): Watch =>
  (scenario) => {
    const outcome = run(scenario, options);
    return { run: outcome, breaches: outcome.lines.filter((line) => !stillInside(line, today)) };
  };
