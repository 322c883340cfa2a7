import { newFault } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';
import { WATER } from '../../../shared/species/block';
import { watchedLines } from '../../../shared/verdict/lines';
import { goOn } from '../../engine/goOn';
import { stateAfter } from '../../engine/run';
import type { Simulation, SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import { TrialRun, type Run } from '../../engine/trialRun';

/** A stretch without the keeper, and what stood empty in it. */
export interface LeftRun {
  readonly run: Run;
  /** When the top-off's reservoir was first empty, h; undefined when it never was. */
  readonly reservoirDryH: number | undefined;
  /** The same of each pump's bottle. */
  readonly bottlesDryH: readonly (number | undefined)[];
  /** Part of what was filled in that was used, of the reservoir and of each bottle; 0 where the run stopped early. */
  readonly reservoirUsed: number;
  readonly bottlesUsed: readonly number[];
}

/** Notes when each vessel is first empty: the engine puts a new bottle in its place at once. */
class DryWatch {
  private readonly firstH = new Map<string, number>();

  /** When the first of these was; undefined when none was. */
  firstOf(ids: readonly string[]): number | undefined {
    const moments = ids.flatMap((id) => this.firstH.get(id) ?? []);
    return moments.length > 0 ? Math.min(...moments) : undefined;
  }

  note({ books, timeH }: Simulation): void {
    for (const id of books.vesselIds) {
      if (id === 'tank' || id === 'outside' || this.firstH.has(id)) continue;
      if (books.vessel(id)[WATER]! <= 0) this.firstH.set(id, timeH);
    }
  }
}

/** A tank that is left full: every run of it begins with the same water, reservoir and bottles. */
export class LeftTank {
  private readonly from: TankState;

  constructor(
    full: Scenario,
    private readonly options: SimulationOptions,
  ) {
    this.from = stateAfter({ ...full, days: 0, faults: [] }, options);
  }

  /** As one of its plans runs when nobody puts a new bottle in place of an empty one. */
  run(scenario: Scenario): LeftRun {
    const watched = this.watched(scenario);
    const ended = watched.bottlesDryH.flatMap((dryH, i) =>
      dryH === undefined ? [] : [pumpEnds(scenario, i + 1, dryH)],
    );
    if (ended.length === 0) return watched;
    const { run } = this.watched({ ...scenario, faults: [...scenario.faults, ...ended] });
    return { ...watched, run };
  }

  private watched(scenario: Scenario): LeftRun {
    const dry = new DryWatch();
    const watched = {
      lines: watchedLines(scenario),
      fromH: 0,
      onStep: (simulation: Simulation) => dry.note(simulation),
    };
    const goes = goOn(scenario, this.from, this.options.factors);
    const trial = new TrialRun(scenario, this.options, watched, undefined, goes);
    trial.advance(Infinity);
    const run = trial.result();
    const left = run.stopped ? undefined : trial.state();
    const { reservoirs, devices } = goes.plan;
    const pipes = devices.flatMap((device) => device.pipes);
    const bottleOf = (pump: number) =>
      pipes.flatMap((pipe) => (pipe.pump === pump ? pipe.from : []));
    const bottles = scenario.dosers.map((_, i) => bottleOf(i));
    const held = (state: TankState, ids: readonly string[]): number =>
      state.vessels.reduce(
        (kg, { id, amounts }) => (ids.includes(id) ? kg + amounts[WATER]! : kg),
        0,
      );
    const used = (ids: readonly string[]): number => {
      const full = held(this.from, ids);
      return full > 0 && left ? 1 - held(left, ids) / full : 0;
    };
    return {
      run,
      reservoirDryH: dry.firstOf(reservoirs),
      bottlesDryH: bottles.map((ids) => dry.firstOf(ids)),
      reservoirUsed: used(reservoirs),
      bottlesUsed: bottles.map(used),
    };
  }
}

/** A pump with an empty bottle gives nothing from then on. */
function pumpEnds({ start, days }: Scenario, pump: number, dryH: number) {
  const clock = dryH + start.clockHour;
  const day = Math.floor(clock / 24);
  const hours = Math.max(1, days * 24 - dryH);
  const fault = newFault('doserOff', { day: day + 1, endsAfterH: hours, pump });
  // To the moment: a form would take hours of the clock only to a hundredth.
  return { ...fault, hour: clock - 24 * day };
}
