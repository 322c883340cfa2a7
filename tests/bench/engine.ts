import type { Scenario } from '../../shared/scenario/schema';
import { CarbonateSolver } from '../../shared/seawater';
import { indexOf, solutionKg } from '../../shared/species/block';
import { compile } from '../../workers/engine/compile';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { TankView } from '../../workers/engine/tankView';
import { quantile } from './quantile';

export type Print = (name: string, value: number, unit: string) => void;

const WARM_UPS = 5;
const TIMES = 15;
const LOOKS = 100_000;

export function medianMs(work: () => void, warmUps = WARM_UPS, times = TIMES): number {
  for (let i = 0; i < warmUps; i++) work();
  const taken = Array.from({ length: times }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
  return quantile(taken, 0.5);
}

const nsEach = (work: () => void) => (medianMs(work, 2, 5) * 1e6) / LOOKS;

/** Waters that differ a little from look to look, as the stages of a step do. */
const wobble = (i: number) => 1 + 1e-4 * Math.sin(i);

/** One look as a step takes it: the tank read and every rate worked out. */
function lookNs(scenario: Scenario): number {
  const { channels, books, weather } = compile(scenario);
  const view = new TankView();
  const amounts = Float64Array.from(books.tank);
  let sum = 0;
  const ns = nsEach(() => {
    for (let i = 0; i < LOOKS; i++) {
      amounts[indexOf.DIC] = books.tank[indexOf.DIC]! * wobble(i);
      const tempC = weather.tempC(1);
      view.read(amounts, 1, tempC, weather.pco2AirUatm(1, tempC));
      for (const { process } of channels) sum += process.rate(view, process.settings, 1e-3);
    }
  });
  if (!Number.isFinite(sum)) throw new RangeError('a rate is not finite');
  return ns;
}

/** The constants and one solve of the same waters, and nothing else. */
function solveNs(scenario: Scenario): number {
  const { tank } = compile(scenario).books;
  const solver = new CarbonateSolver();
  const { tempC, salinityPractical } = scenario.tank;
  solver.setConditions(tempC, salinityPractical);
  solver.setTotalsFromSalinity(salinityPractical);
  const alkalinity = (scenario.tank.alkalinityDkh * 0.35665e-3) / 1.0233;
  const dic = tank[indexOf.DIC]! / solutionKg(tank);
  return nsEach(() => {
    for (let i = 0; i < LOOKS; i++) {
      solver.setConditions(tempC, salinityPractical * wobble(i));
      solver.solve(alkalinity, dic * wobble(i));
    }
  });
}

/** Times the engine in Node, on 90-day plans; the first figures are of the typical one. */
export function benchEngine(print: Print, plans: readonly (readonly [string, Scenario])[]): void {
  const typical = plans.find(([name]) => name === 'limewater-holds.json')![1];
  const slowest = plans
    .map(([name, scenario]) => ({ name, scenario, ms: medianMs(() => run(scenario), 2, 3) }))
    .toSorted((a, b) => b.ms - a.ms)[0]!;
  print(
    'trial_90d_typical_limewater-holds',
    medianMs(() => run(typical)),
    'ms',
  );
  print(
    `trial_90d_heaviest_${slowest.name.replace('.json', '')}`,
    medianMs(() => run(slowest.scenario)),
    'ms',
  );
  print(
    'settle_typical',
    medianMs(() => settle(typical, usualOptions)),
    'ms',
  );
  const [look, solve] = [lookNs(typical), solveNs(typical)];
  print('look', look, 'ns');
  print('constants_and_solve', solve, 'ns');
  print('look_over_constants_and_solve', look / solve, 'ratio');
  print('trace_year', run({ ...typical, days: 365 }).trace.buffer.byteLength / 1024 ** 2, 'MiB');
}
