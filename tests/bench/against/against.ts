import { bundled, bundledAt } from './bundled';
import { counted } from './counted';
import { files, jobs } from './jobs';
import { paired } from './paired';
import { traces } from './traces';

/** This tree beside a commit: `npm run bench -- --against COMMIT`, a line a figure. */
const commit = process.argv[process.argv.indexOf('--against') + 1];
if (!commit) throw new Error('expected a commit: npm run bench -- --against COMMIT');
const before = await bundled(commit);
const after = await bundledAt('.', 'test-results/bench/own');
const old = new Set(files(before));
const names = files(after).filter((name) => old.has(name));
const all = jobs(names);
console.log('job: ms before, ms after, times as fast (CPU time, median of pairs)');
for (const [name, job] of Object.entries(all)) {
  const figures = paired(job(before), job(after));
  const { faster } = figures;
  console.log(
    `${name}: ${figures.before.toFixed(1)}, ${figures.after.toFixed(1)}, ${faster.toFixed(2)}`,
  );
}
for (const [when, tree] of Object.entries({ before, after })) {
  const { looks, steps, mib } = await counted(tree, all['trial_90d limewater-holds']!(tree));
  console.log(`limewater-holds ${when}: ${looks} looks, ${steps} steps, ${mib.toFixed(1)} MiB`);
}
traces(before, after, names);
