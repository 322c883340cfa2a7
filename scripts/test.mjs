import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { alone, checks, reportFolder } from './runners.mjs';

/**
 * Runs one to its end. What runs alone is heard as it goes, what runs beside others when it is done.
 * @param {import('./runners.mjs').Runner} runner
 * @param {boolean} isAlone
 * @returns {Promise<{ name: string, seconds: number } & import('./counts.mjs').Count>}
 */
function run({ name, script, args = [], env = {}, count }, isAlone) {
  const start = Date.now();
  if (isAlone) console.log(`\n── ${name}`);
  const child = spawn('npm', ['run', '--silent', script, '--', ...args], {
    stdio: isAlone ? ['ignore', 'inherit', 'inherit'] : ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...env },
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (text) => (said += String(text)));
  return new Promise((done) => {
    child.once('close', (status) => {
      if (!isAlone) console.log(`\n── ${name}\n${said.trimEnd()}`);
      done({ name, ...count(status === 0), seconds: (Date.now() - start) / 1000 });
    });
  });
}

const rows = await Promise.all(checks.map((one) => run(one, false)));
for (const one of alone) rows.push(await run(one, true));
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
