import type { Scenario } from '../../../shared/scenario/schema';
import type { ColumnId } from '../../../shared/trace/columns';
import { readColumn } from '../../../shared/trace/trace';
import { run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import { restingItself } from '../plan/atRest';
import { leaveOdds, type Moves } from './leaveOdds';
import { unknownsOf } from './unknowns';

/** The quantities whose spread is drawn. */
export const spreadColumns = ['alkalinity_dkh', 'ph_nbs'] as const satisfies readonly ColumnId[];

type Hourly = Readonly<Record<(typeof spreadColumns)[number], Float64Array<ArrayBuffer>>>;

/** How far the tank that a plan stands for may be from its run: nine of ten such tanks lie between. */
export interface Spread {
  /** How far below the run, hour by hour, of each quantity; and how far above. */
  readonly below: Hourly;
  readonly above: Hourly;
  /** Share of such tanks whose alkalinity leaves the keeper's limits; undefined before all is reckoned. */
  readonly leaves: number | undefined;
}

/** As far aside as 19 in 20 are; of whole tanks, which are off in everything at once, nine in ten lie inside. */
const SIGMAS = 2;

/**
 * Each unknown by itself two σ aside, to either side, the moves of a side added in squares (GUM, JCGM
 * 100:2008, 5.1.2, uncorrelated; to either side since a tank answers more to one than to the other).
 * What is known after each further unknown is yielded, the coarsest first.
 */
export function* spreadOf(scenario: Scenario, options: SimulationOptions): Generator<Spread> {
  const columns = (one: Scenario) => {
    const { trace } = run(one, options);
    return spreadColumns.map((id) => readColumn(trace, id));
  };
  const set = columns(scenario);
  // A tank that leaves the range of its chemistry ends sooner: what is not known then stays out.
  const movesOf = (one: Scenario) =>
    columns(one).map((other, c) =>
      set[c]!.map((value, hour) => (hour < other.length ? other[hour]! - value : 0)),
    );
  const squares = () => set.map(({ length }) => new Float64Array(length));
  const [below, above] = [squares(), squares()];
  const rooted = (all: Float64Array[]): Hourly => {
    const [alkalinity_dkh, ph_nbs] = all.map((column) => column.map(Math.sqrt));
    return { alkalinity_dkh: alkalinity_dkh!, ph_nbs: ph_nbs! };
  };
  const moves: Moves[] = [];
  const unknowns = unknownsOf(scenario);
  const resting =
    scenario.start.omegaReference > 0
      ? restingItself(scenario, options)
      : (other: Scenario) => other;
  for (const [n, aside] of unknowns.entries()) {
    const [less, more] = [-SIGMAS, SIGMAS].map((sigmas) =>
      movesOf(resting(aside(scenario, sigmas))),
    );
    set.forEach((column, c) => {
      for (let hour = 0; hour < column.length; hour++) {
        const both = [less![c]![hour]!, more![c]![hour]!];
        below[c]![hour]! += Math.min(0, ...both) ** 2;
        above[c]![hour]! += Math.max(0, ...both) ** 2;
      }
    });
    moves.push({ sigmas: SIGMAS, less: less![0]!, more: more![0]! });
    const isLast = n === unknowns.length - 1;
    yield {
      ...{ below: rooted(below), above: rooted(above) },
      leaves: isLast ? leaveOdds(set[0]!, moves, scenario.limits) : undefined,
    };
  }
}
