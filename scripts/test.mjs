import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { reportFolder, runners } from './runners.mjs';

/** @param {import('./runners.mjs').Runner} runner */
function run({ name, script, args = [], env = {}, count }) {
  console.log(`\n── ${name}`);
  const start = Date.now();
  const { status } = spawnSync('npm', ['run', '--silent', script, '--', ...args], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  return { name, ...count(status === 0), seconds: (Date.now() - start) / 1000 };
}

const rows = runners.map(run);
rmSync(reportFolder, { recursive: true });

console.log(`\n${'runner'.padEnd(12)}passed  failed  seconds`);
for (const { name, passed, failed, seconds } of rows) {
  const cells = [String(passed).padStart(6), String(failed).padStart(8)];
  console.log(name.padEnd(12) + cells.join('') + seconds.toFixed(1).padStart(9));
}
for (const { name, note } of rows) if (note) console.log(`The runner "${name}" ${note}.`);

const passed = rows.reduce((sum, row) => sum + row.passed, 0);
const failed = rows.reduce((sum, row) => sum + row.failed, 0);
process.exitCode = failed > 0 ? 1 : 0;
console.log(`\n${passed} passed, ${failed} failed`);
