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

/** Rounding and the phase of a pump move the worst of a day by so much, in shares of the limit. */
const SAME = 0.005;

const beyond = ({ trouble, limit }: LineResult, value: number): number =>
  trouble === 'above' ? value - limit : limit - value;

/** Runs, and tells what is passed and was not passed as far today. */
export const watching =
  (options: SimulationOptions, today: Today = []): Watch =>
  (scenario) => {
    const outcome = run(scenario, options);
    const breaches = outcome.lines.filter((line) => {
      if (line.firstH === undefined) return false;
      const before = today.find(({ id }) => id === line.id)?.worst ?? line.limit;
      const allowed = Math.max(0, beyond(line, before)) + SAME * Math.abs(line.limit);
      return beyond(line, line.worst) > allowed;
    });
    return { run: outcome, breaches };
  };
