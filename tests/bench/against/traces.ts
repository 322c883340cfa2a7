import type { Crossing } from '../../../shared/trace/trace';
import type { Tree } from './bundled';
import { planOf } from './jobs';

const DAYS = 40;
const COLUMNS = ['ph_nbs', 'alkalinity_dkh'] as const;
const FINER = 10;

function trace(tree: Tree, file: string, part: number) {
  const { run, usualOptions, readColumn } = tree.subject;
  const { toleranceUmolPerKg } = usualOptions;
  const plan = { ...planOf(tree, file), days: DAYS };
  const ran = run(plan, { ...usualOptions, toleranceUmolPerKg: toleranceUmolPerKg / part });
  return { columns: COLUMNS.map((id) => readColumn(ran.trace, id)), crossings: ran.crossings };
}

type Traced = ReturnType<typeof trace>;

const worst = (a: Float64Array, b: Float64Array): number =>
  a.subarray(0, b.length).reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0);

/** The longest that a crossing of the one is from its like in the other, minutes; those without one. */
function crossingsApart(a: readonly Crossing[], b: readonly Crossing[]): string {
  let minutes = 0;
  let alone = Math.abs(a.length - b.length);
  for (const { limit, into, timeH } of a) {
    const likes = b.filter((other) => other.limit === limit && other.into === into);
    const nearest = Math.min(...likes.map((other) => Math.abs(other.timeH - timeH)));
    if (Number.isFinite(nearest)) minutes = Math.max(minutes, nearest * 60);
    else alone++;
  }
  return `${minutes.toFixed(2)} min, ${alone} alone`;
}

/** How far both trees' traces lie apart, and each from its own held ten times finer. */
export function traces(before: Tree, after: Tree, names: readonly string[]): void {
  console.log('trace: before–after; before, after against ten times finer (pH, dKH; crossings)');
  for (const file of names) {
    const [old, now] = [trace(before, file, 1), trace(after, file, 1)];
    const [oldFine, nowFine] = [trace(before, file, FINER), trace(after, file, FINER)];
    const apart = (a: Traced, b: Traced) =>
      `${a.columns.map((column, i) => worst(column, b.columns[i]!).toExponential(1)).join(', ')}; ` +
      crossingsApart(a.crossings, b.crossings);
    console.log(
      `${file.replace('.json', '')}: ${apart(old, now)} | ${apart(old, oldFine)} | ` +
        `${apart(now, nowFine)} | held finer ${apart(oldFine, nowFine)}`,
    );
  }
}
