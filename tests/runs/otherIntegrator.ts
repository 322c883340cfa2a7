import { createRequire } from 'node:module';
import type { Scenario } from '../../shared/scenario/schema';
import { BLOCK_SIZE, solutionKg, WATER } from '../../shared/species/block';
import { compile, type Plan } from '../../workers/engine/compile';
import { settle } from '../../workers/engine/settle';
import { Simulation, usualOptions } from '../../workers/engine/simulation';
import { TankView } from '../../workers/engine/tankView';

type Slopes = (timeH: number, amounts: number[]) => number[];

interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(slopes: Slopes, from: number, start: number[], to: number): { y: number[] };
}

// An import would have its sources, which ship beside it, judged by our compiler's settings.
const odex = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => OdexSolver };

/** Rates of change of the tank's amounts, written down afresh from the reactions and the pipes. */
function slopesOf({ channels, devices, books, weather, scenario }: Plan, light: number): Slopes {
  const { kLaPerH } = scenario.gas;
  const view = new TankView();
  view.setLight(light, 0);
  view.kLaPerH = kLaPerH;
  return (timeH, amounts) => {
    const tempC = weather.tempC(timeH);
    view.read(Float64Array.from(amounts), timeH, tempC, weather.pco2AirUatm(timeH, tempC));
    const slopes = new Array<number>(BLOCK_SIZE).fill(0);
    const rates: number[] = [];
    for (const { process, tankTerms, lead } of channels) {
      const rate = process.rate(view, process.settings, rates[lead]);
      rates.push(rate);
      for (const { index, moles } of tankTerms) slopes[index]! += moles * rate;
    }
    for (const pipe of devices.flatMap(({ pipes }) => pipes)) {
      if (pipe.vapour) slopes[WATER]! -= pipe.kgPerH;
      else {
        const source = books.vessel(pipe.from);
        const perH = pipe.kgPerH / solutionKg(source);
        source.forEach((amount, i) => (slopes[i]! += amount * perH));
      }
    }
    return slopes;
  };
}

export interface Hour {
  readonly timeH: number;
  readonly phNbs: number;
  readonly alkalinityDkh: number;
}

const hourOf = ({ timeH, phNbs, alkalinityDkh }: TankView): Hour => ({
  ...{ timeH, phNbs, alkalinityDkh },
});

/** The plan with nothing sudden in it: no level switch, no water change, no addition. */
export const withoutSwitches = (scenario: Scenario): Scenario => ({
  ...scenario,
  days: 2,
  topOff: { ...scenario.topOff, reservoirL: 0 },
  waterChanges: { ...scenario.waterChanges, percent: 0 },
  additions: [],
  lights: { ...scenario.lights, rampHours: 0 },
  dosers: scenario.dosers.map((doser) => ({
    ...doser,
    schedule: { ...doser.schedule, way: 'spread', fromHour: 0, hours: 24 },
  })),
});

/** Every hour of two days by our steps, and by the extrapolation method of Hairer and Wanner. */
export function bothIntegrators(scenario: Scenario): { ours: Hour; theirs: Hour }[] {
  const settled = settle(scenario, usualOptions);
  const plan = compile(scenario, settled);
  const simulation = new Simulation(plan);
  const solver = new odex.Solver(BLOCK_SIZE);
  solver.absoluteTolerance = solver.relativeTolerance = 1e-11;
  let amounts = Array.from(plan.books.tank);
  const theirView = new TankView();
  const hours: { ours: Hour; theirs: Hour }[] = [];
  for (let hour = 0; hour < scenario.days * 24; hour++) {
    // Lights switch on the hour in every plan that ships, so an hour is free of events.
    const slopes = slopesOf(plan, simulation.view.light);
    amounts = solver.solve(slopes, hour, amounts, hour + 1).y;
    simulation.advanceTo(hour + 1);
    const tempC = plan.weather.tempC(hour + 1);
    theirView.read(Float64Array.from(amounts), hour + 1, tempC, 0);
    hours.push({ ours: hourOf(simulation.view), theirs: hourOf(theirView) });
  }
  return hours;
}
