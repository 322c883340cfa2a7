import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { parseScenarioText } from '../../shared/scenario/parse';
import { MOST_DAYS } from '../../shared/scenario/schema';
import { sentence } from '../../shared/scenario/sentence';
import { traceCsv } from '../../shared/trace/csv';
import { MOST_MEMBERS } from '../../shared/verdict/spreads';
import { expressionProblem } from '../say/expression';
import { changeTexts } from '../say/verdict/changeTexts';
import { tellVerdict } from '../say/verdict/verdict';
import { sampleFactors } from '../../shared/units/sampleFactors';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { drillText, ensembleText } from './drillText';
import { ensembleOf } from '../../workers/studies/drill/ensembleOf';
import { firstChange } from '../../workers/studies/firstChange';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { jsonText } from './json';
import { endWithReader, print, readText, refuse, refuseFile } from './terminal';
import { trialJson } from './trialJson';

const USAGE =
  'npm run --silent simulate -- SCENARIO.json [--json] [--out FILE.csv] [--hours N] [--members N] [--seed N]';

/** Seeds are whole numbers of 32 bits. */
const MOST_SEED = 2 ** 32 - 1;

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        hours: { type: 'string' },
        members: { type: 'string' },
        seed: { type: 'string' },
        json: { type: 'boolean', default: false },
      },
    });
    const [file] = positionals;
    if (positionals.length !== 1 || !file) refuse(`One scenario file is needed. ${USAGE}`);
    const numberOf = (name: 'hours' | 'members' | 'seed', whole: boolean, most: number) => {
      const text = values[name];
      if (text === undefined) return undefined;
      const value = Number(text);
      if (value > 0 && value <= most && (!whole || Number.isInteger(value))) return value;
      const expected = `a ${whole ? 'whole ' : ''}number above 0, at most ${most}`;
      return refuse(`--${name}: got ${text}; expected ${expected}. ${USAGE}`);
    };
    return {
      ...{ file, out: values.out, json: values.json },
      hours: numberOf('hours', false, MOST_DAYS * 24),
      members: numberOf('members', true, MOST_MEMBERS),
      seed: numberOf('seed', true, MOST_SEED) ?? 1,
    };
  } catch (error) {
    return refuse(`${(error as Error).message} ${USAGE}`);
  }
}

endWithReader();

const { file, out, json, hours, members, seed } = readArguments();
const parsed = parseScenarioText(readText(file));
if (!parsed.ok) refuseFile(file, parsed.problems.map(sentence));
const scenario = hours === undefined ? parsed.scenario : { ...parsed.scenario, days: hours / 24 };
const sampled = await sampleFactors(scenario);
if (!sampled.ok)
  refuseFile(
    file,
    sampled.wrong.map((one) => sentence(expressionProblem(one))),
  );
const isDrill = scenario.faults.length > 0;
if (members !== undefined && !isDrill) {
  refuse(
    '--members: this plan has no fault; an ensemble is of a drill. Leave it out, or add a fault.',
  );
}
try {
  const options = { ...usualOptions, factors: sampled.factors };
  const outcome = run(scenario, options);
  const verdict = tellVerdict(scenario, outcome);
  const { change } = firstChange(scenario, options, outcome);
  if (out !== undefined) writeFileSync(out, traceCsv(outcome.trace));
  if (json) {
    const drill = isDrill ? await rehearse(scenario, options, async () => true) : undefined;
    const ensemble =
      members === undefined
        ? undefined
        : { seed, summary: ensembleOf(scenario, members, seed, options) };
    console.log(jsonText(trialJson({ scenario, outcome, verdict, change, drill, ensemble })));
  } else {
    print(`${scenario.title}\n${scenario.question}\n`.trimEnd());
    print(`\nThis plan ${verdict.headline}`);
    for (const detail of verdict.details) print(detail);
    for (const first of changeTexts(change)) print(`${first}.`);
    if (isDrill) print(`\n${await drillText(scenario, options)}`);
    if (members !== undefined) print(`\n${ensembleText(scenario, members, seed, options)}`);
    if (out !== undefined) print(`${outcome.trace.rows} hourly rows are in ${out}.`);
  }
} catch (error) {
  refuse(`${file}: ${(error as Error).message}`);
}
