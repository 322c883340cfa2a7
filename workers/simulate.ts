import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { parseScenarioText } from '../shared/scenario/parse';
import { sentence } from '../shared/scenario/problem';
import { traceCsv } from '../shared/trace/csv';
import { verdictOf } from '../shared/verdict/verdict';
import { sampleFactors } from '../shared/units/sampleFactors';
import { run } from './engine/run';
import { usualOptions } from './engine/simulation';
import { drillText, ensembleText } from './studies/drill/drillText';

const USAGE =
  'npm run --silent simulate -- SCENARIO.json [--out FILE.csv] [--hours N] [--members N] [--seed N]';

/** Ends with code 2 and every reason, one a line, on standard error. */
function refuse(...reasons: string[]): never {
  console.error(reasons.join('\n'));
  process.exit(2);
}

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        hours: { type: 'string' },
        members: { type: 'string' },
        seed: { type: 'string' },
      },
    });
    const [file] = positionals;
    if (positionals.length !== 1 || !file) refuse(`One scenario file is needed. ${USAGE}`);
    const numberOf = (name: 'hours' | 'members' | 'seed', whole: boolean) => {
      const text = values[name];
      if (text === undefined) return undefined;
      const value = Number(text);
      if (value > 0 && (!whole || Number.isInteger(value))) return value;
      return refuse(
        `--${name}: got ${text}; expected a ${whole ? 'whole ' : ''}number above 0. ${USAGE}`,
      );
    };
    return {
      ...{ file, out: values.out, hours: numberOf('hours', false) },
      ...{ members: numberOf('members', true), seed: numberOf('seed', true) ?? 1 },
    };
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

// A reader that has seen enough, as `head` does, closes the pipe.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) =>
  process.exit(code === 'EPIPE' ? 0 : 1),
);

const { file, out, hours, members, seed } = readArguments();
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
  const options = { ...usualOptions, factors: sampled.factors };
  const outcome = run(scenario, options);
  const verdict = verdictOf(scenario, outcome);
  if (out !== undefined) writeFileSync(out, traceCsv(outcome.trace));
  console.log(`${scenario.title}\n${scenario.question}\n`.trimEnd());
  console.log(`\nThis plan ${verdict.headline}`);
  for (const detail of verdict.details) console.log(detail);
  if (scenario.faults.length > 0) console.log(`\n${await drillText(scenario, options)}`);
  if (members !== undefined && scenario.faults.length === 0) {
    refuse(
      '--members: this plan has no fault; an ensemble is of a drill. Leave it out, or add a fault.',
    );
  }
  if (members !== undefined) console.log(`\n${ensembleText(scenario, members, seed, options)}`);
  if (out !== undefined) console.log(`${outcome.trace.rows} hourly rows are in ${out}.`);
} catch (error) {
  refuse(`${file}: ${(error as Error).message}`);
}
