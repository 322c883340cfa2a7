import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn, type Trace } from '../../../shared/trace/trace';
import { emptyFrom, firstFaultH } from '../../../shared/verdict/drillOutcome';
import type { Spreads } from '../../../shared/verdict/spreads';
import { settle } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { runDrill } from './drillRun';
import { drawsOf, memberOf, type Draws } from './member';

/** How one line fared in one tank; hours count from the moment at which the first thing broke. */
export interface MemberLine {
  readonly id: string;
  readonly afterH: number | undefined;
  readonly worst: number;
  readonly outsideH: number;
  readonly backAfterH: number | undefined;
}

/** One tank of an ensemble: what it gives away of itself, small enough to cross the border. */
export interface MemberResult {
  readonly index: number;
  readonly draws: Draws;
  readonly lines: readonly MemberLine[];
  readonly dryAfterH: number | undefined;
  /** Hour by hour from the moment at which the first thing broke. */
  readonly ph: Float32Array;
  readonly dkh: Float32Array;
}

/** Values every hour from a moment on, straight lines between the rows of the trace. */
function hourlyFrom(trace: Trace, column: 'ph_nbs' | 'alkalinity_dkh', fromH: number) {
  const values = readColumn(trace, column);
  const first = Math.min(values.length - 1, Math.floor(fromH));
  const part = fromH - first;
  return Float32Array.from({ length: values.length - first - 1 }, (_, i) => {
    const [a, b] = [values[first + i]!, values[first + i + 1]!];
    return a + part * (b - a);
  });
}

/** The options that every member of an ensemble runs with: sought from where the keeper's tank settles. */
export const memberOptions = (
  scenario: Scenario,
  options: SimulationOptions,
): SimulationOptions => ({ ...options, near: settle(scenario, options) });

/**
 * Runs one member of an ensemble; the same seed and index give the same numbers anywhere.
 * `options` come from `memberOptions`.
 */
export function runMember(
  scenario: Scenario,
  spreads: Spreads,
  seed: number,
  index: number,
  options: SimulationOptions,
): MemberResult {
  const draws = drawsOf(seed, index);
  const own = memberOf(scenario, spreads, draws);
  const { trace, lines, switchings } = runDrill(own, options);
  const fromH = firstFaultH(own);
  const after = (timeH: number | undefined) => (timeH === undefined ? undefined : timeH - fromH);
  return {
    ...{ index, draws },
    lines: lines.map(({ id, firstH, worst, outsideH, backH }) => ({
      ...{ id, worst, outsideH, afterH: after(firstH), backAfterH: after(backH) },
    })),
    dryAfterH: after(emptyFrom({ switchings }, fromH)),
    ph: hourlyFrom(trace, 'ph_nbs', fromH),
    dkh: hourlyFrom(trace, 'alkalinity_dkh', fromH),
  };
}

/** The scenario that a member is, to be looked at on its own. */
export const replayed = (scenario: Scenario, spreads: Spreads, seed: number, index: number) =>
  memberOf(scenario, spreads, drawsOf(seed, index));
