import type { Scenario } from '../../../shared/scenario/schema';
import {
  drillLines,
  limitLines,
  type Line,
  type LineQuantity,
} from '../../../shared/verdict/lines';
import { TrialRun, type Run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';

/** A limit that a run passes, and by how much at worst. */
export interface Breach {
  readonly line: string;
  readonly quantity: LineQuantity;
  readonly limit: number;
  readonly worst: number;
  readonly timeH: number;
  /** First moment beyond it, h of the run. */
  readonly firstH: number;
}

/** A run with everything that it passes. */
export interface Watched {
  readonly run: Run;
  readonly worst: Readonly<Record<string, number>>;
  readonly breaches: readonly Breach[];
}

export type Watch = (scenario: Scenario) => Watched;

/** How far the tank is beyond a line already: a plan may not take it any farther. */
export type Already = Readonly<Record<string, number>>;

/** Rounding and the phase of a pump move the worst of a day by so much, in shares of the limit. */
const SAME = 0.005;

const linesOf = (scenario: Scenario): Line[] => {
  const all = [...limitLines(scenario), ...drillLines(scenario)];
  return all.filter(({ id }, i) => all.findIndex((line) => line.id === id) === i);
};

const beyond = ({ trouble, limit }: Line, value: number): number =>
  trouble === 'above' ? value - limit : limit - value;

/** Runs and watches every limit of the keeper's, step by step. */
export const watching =
  (options: SimulationOptions, already: Already = {}): Watch =>
  (scenario) => {
    const lines = linesOf(scenario);
    const trial = new TrialRun(scenario, options, { lines, fromH: 0 });
    trial.advance(Infinity);
    const run = trial.result();
    const worst = Object.fromEntries(lines.map(({ id }, i) => [id, trial.worst[i]!.value]));
    const breaches = lines.flatMap((line, i): Breach[] => {
      const { value, timeH } = trial.worst[i]!;
      const allowed = Math.max(0, beyond(line, already[line.id] ?? line.limit));
      if (beyond(line, value) <= allowed + SAME * Math.abs(line.limit)) return [];
      const first = run.crossings.find((one) => one.limit === line.id && one.into === 'outside');
      const firstH = first?.timeH ?? 0;
      const { id, quantity, limit } = line;
      return [{ line: id, quantity, limit, worst: value, timeH, firstH }];
    });
    return { run, worst, breaches };
  };
