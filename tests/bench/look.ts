import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Scenario } from '../../shared/scenario/schema';
import { SeawaterConstants } from '../../shared/seawater/constants';
import { totalFluorideMolPerKg } from '../../shared/seawater/totals';
import { alkalinityWeights, indexOf, saltKgWeights, WATER } from '../../shared/species/block';
import { SALT_G_PER_KG_PER_PSU } from '../../shared/water/referenceSeawater';
import { compile } from '../../workers/engine/compile';
import { TankView } from '../../workers/engine/tankView';
import type { Print } from './engine';
import { cpuMs } from './cpuMs';
import { quantile } from './quantile';

const LOOKS = 200_000;
const TIMES = 7;
const SPACING = 0.1;
const { DIC, B, SO4, PO4, TAN, Ca } = indexOf;

/** What `look.c` reads of the constants, in its order. */
const carried = [
  ...(['k0', 'k1', 'k2', 'kb', 'kw', 'kf', 'ks', 'kp1', 'kp2', 'kp3', 'kNh4'] as const),
  ...(['kspAragonite', 'hTotalPerHFree', 'hSwsPerHTotal', 'fH', 'phTotalOverPhNbs'] as const),
];

/** Reads the same waters as `look.c`, in CPU time as that does; the sum shows that both read the same. */
function inJavaScript(view: TankView, amounts: Float64Array, tempC: number) {
  const carbon = amounts[DIC]!;
  let sum = 0;
  const once = () => {
    sum = 0;
    for (let i = 0; i < LOOKS; i++) {
      amounts[DIC] = carbon * (1 + 1e-4 * Math.sin(i));
      view.read(amounts, 1, tempC, 420);
      sum += view.omegaAragonite + 1e-9 * view.pco2Uatm + 1e-9 * view.volumeL;
    }
  };
  const taken = Array.from({ length: TIMES }, () => cpuMs(once));
  amounts[DIC] = carbon;
  return { ns: (quantile(taken, 0.5) * 1e6) / LOOKS, sum };
}

function inC(numbers: readonly number[]): { ns: number; sum: number } {
  const program = join(mkdtempSync(join(tmpdir(), 'look-')), 'look');
  const source = new URL('../../tests/bench/look.c', import.meta.url).pathname;
  execFileSync('cc', ['-O2', '-o', program, source, '-lm']);
  const [ns, sum] = execFileSync(program, { input: numbers.join('\n'), encoding: 'utf8' })
    .split(' ')
    .map(Number);
  return { ns: ns!, sum: sum! };
}

/** A look at the water, before any process is asked: here and in C, where there is a compiler. */
export function benchLook(print: Print, scenario: Scenario): void {
  const { books } = compile(scenario);
  const { tempC } = scenario.tank;
  const amounts = Float64Array.from(books.tank);
  const view = new TankView();
  view.read(amounts, 1, tempC, 420);
  const middle = SPACING * Math.round(view.salinityPractical / SPACING);
  const exact = [-1, 0, 1].flatMap((place) => {
    const k = new SeawaterConstants();
    k.set(tempC, middle + place * SPACING);
    return carried.map((name) => k[name]);
  });
  const here = inJavaScript(view, amounts, tempC);
  print('look_before_rates', here.ns, 'ns');
  if (spawnSync('cc', ['--version']).status !== 0) return;
  const there = inC([
    ...[WATER, DIC, B, SO4, PO4, TAN, Ca, LOOKS],
    ...[tempC, 1000 / SALT_G_PER_KG_PER_PSU, totalFluorideMolPerKg(1), middle, SPACING],
    ...[view.solver.k.fco2PerPco2, view.hTotal],
    ...[...alkalinityWeights, ...saltKgWeights, ...amounts, ...exact],
  ]);
  if (!(Math.abs(there.sum - here.sum) < 1e-6 * Math.abs(here.sum))) {
    throw new Error(`the look in C is another: ${there.sum} against ${here.sum}`);
  }
  print('look_before_rates_in_c', there.ns, 'ns');
  print('look_before_rates_over_c', here.ns / there.ns, 'ratio');
}
