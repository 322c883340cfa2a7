import type { TankEvent } from '../../../shared/events/event';
import { noFactors } from '../../../shared/scenario/factors';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { isUse } from '../../../shared/trace/trace';
import { compile } from '../../engine/compile';
import { takenOver } from '../../engine/goOn';
import { LeftRange } from '../../engine/leftRange';
import { settle, type Settled } from '../../engine/settle';
import { Simulation, type SimulationOptions } from '../../engine/simulation';
import { simulatedState } from '../../engine/tankState';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Happened } from './asItHappened';
import { metalNames, metalsIn, movedBy, noMetals, type Metals } from './metalsMoved';
import { useOver, type Stretch } from './useOver';

/** What stands where a tank has left the chemistry's range: far from any reading, but finite. */
const LEFT = 0;
const LOOK_H = 3;

/** The run of a log with given parameters. */
export interface Course {
  /** What each observation should read, offsets of probe and lots left out. */
  readonly water: readonly number[];
  /** Alkalinity every few hours of the log. */
  readonly past: readonly { readonly timeH: number; readonly dkh: number }[];
  /** Alkalinity when the log ends. */
  readonly endDkh: number;
  /** What the corals took at the end, by the engine's own ledger. */
  readonly useDkhPerDay: number;
  /** How calcium and magnesium have moved since each was last read, mg/L. */
  readonly metalsMoved: Metals;
  readonly settled: Settled;
}

/** What is run: what was done, and what ran from when on. */
export interface Ran {
  readonly happened: Happened;
  readonly events: readonly TankEvent[];
  readonly stretches: readonly [Stretch, ...Stretch[]];
  /** A cycle that is near the one to be found. */
  readonly near: Settled | undefined;
}

/** Runs a log's tank over every change of plan, and reads it where the log was read. */
export function courseOf(
  { happened, events, stretches, near }: Ran,
  options: SimulationOptions,
): Course {
  const { observations, endH, metalsReadH } = happened;
  const [{ scenario }, ...later] = stretches;
  const done = { events, factors: options.factors ?? noFactors };
  const settled = settle(scenario, options, near);
  let simulation = new Simulation(compile(scenario, { ...settled, ...done }), options);
  const turnTo = (next: Scenario) => {
    const from = { ...simulatedState(simulation), start: settled };
    simulation = new Simulation(takenOver(next, from, done), options, from);
  };
  const takenEq = () =>
    simulation.plan.ledger.reduce(
      (sum, { role }, row) => (isUse(role) ? sum - simulation.books.ledgerEq[row]! : sum),
      0,
    );
  const takenDkh = () => (takenEq() * 1000) / meqPerLPerDkh / scenario.tank.volumeL;
  const water = observations.map(() => LEFT);
  const past: { timeH: number; dkh: number }[] = [];
  const look = (timeH: number) => ({
    timeH,
    see: () => past.push({ timeH, dkh: simulation.view.alkalinityDkh }),
  });
  const { fromH, toH, times } = useOver(later, endH);
  let [before, taken, endDkh] = [0, LEFT, LEFT];
  let [read, ends] = [noMetals, noMetals];
  const marks = [
    ...observations.map(({ timeH, kind }, i) => ({
      timeH,
      see: () => (water[i] = kind === 'ph' ? simulation.view.phNbs : simulation.view.alkalinityDkh),
    })),
    ...Array.from({ length: Math.floor(endH / LOOK_H) + 1 }, (_, i) => look(i * LOOK_H)),
    ...metalNames.map((name) => ({
      timeH: metalsReadH[name],
      see: () => (read = { ...read, [name]: metalsIn(simulation.view)[name] }),
    })),
    { timeH: fromH, see: () => (before = takenDkh()) },
    { timeH: toH, see: () => (taken = takenDkh() - before) },
    ...later.map((stretch) => ({
      timeH: stretch.fromH,
      see: () => turnTo(stretch.scenario),
    })),
  ].toSorted((a, b) => a.timeH - b.timeH);
  try {
    for (const { timeH, see } of marks) {
      simulation.advanceTo(timeH);
      see();
    }
    simulation.advanceTo(endH);
    endDkh = simulation.view.alkalinityDkh;
    ends = metalsIn(simulation.view);
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
  }
  const useDkhPerDay = endDkh === LEFT ? LEFT : (times * taken * 24) / (toH - fromH);
  const metalsMoved = endDkh === LEFT ? noMetals : movedBy(read, ends);
  return { water, past, endDkh, useDkhPerDay, metalsMoved, settled };
}
