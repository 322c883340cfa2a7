import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { parseScenarioText } from '../shared/scenario/parse';
import { sentence } from '../shared/scenario/problem';
import { traceCsv } from '../shared/trace/csv';
import { verdictOf } from '../shared/verdict/verdict';
import { sampleFactors } from '../shared/units/sampleFactors';
import { run } from './engine/run';
import { usualOptions } from './engine/simulation';

const USAGE = 'npm run --silent simulate -- SCENARIO.json [--out FILE.csv] [--hours N]';

/** Ends with code 2 and every reason, one a line, on standard error. */
function refuse(...reasons: string[]): never {
  console.error(reasons.join('\n'));
  process.exit(2);
}

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: { out: { type: 'string' }, hours: { type: 'string' } },
    });
    const [file] = positionals;
    if (positionals.length !== 1 || !file) refuse(`One scenario file is needed. ${USAGE}`);
    const hours = values.hours === undefined ? undefined : Number(values.hours);
    if (hours !== undefined && !(hours > 0)) {
      refuse(`--hours: got ${values.hours}; expected a number above 0. ${USAGE}`);
    }
    return { file, out: values.out, hours };
  } catch (error) {
    return refuse(`${(error as Error).message} ${USAGE}`);
  }
}

function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    return refuse(`${file}: could not be read. ${(error as Error).message}`);
  }
}

const { file, out, hours } = readArguments();
const parsed = parseScenarioText(readText(file));
if (!parsed.ok) {
  refuse(
    `${file}: ${parsed.problems.length} problem${parsed.problems.length > 1 ? 's' : ''}.`,
    ...parsed.problems.map((problem) => `  ${sentence(problem)}`),
  );
}
const scenario = hours === undefined ? parsed.scenario : { ...parsed.scenario, days: hours / 24 };
const sampled = await sampleFactors(scenario);
if (!sampled.ok) refuse(`${file}:`, ...sampled.problems.map((problem) => `  ${sentence(problem)}`));
try {
  const outcome = run(scenario, { ...usualOptions, factors: sampled.factors });
  const verdict = verdictOf(scenario, outcome);
  if (out !== undefined) writeFileSync(out, traceCsv(outcome.trace));
  console.log(`${scenario.title}\n${scenario.question}\n`.trimEnd());
  console.log(`\nThis plan ${verdict.headline}`);
  for (const detail of verdict.details) console.log(detail);
  if (out !== undefined) console.log(`${outcome.trace.rows} hourly rows are in ${out}.`);
} catch (error) {
  refuse(`${file}: ${(error as Error).message}`);
}
