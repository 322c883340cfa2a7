import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { intoTrust } from './intoTrust';
import { Jury } from './jury';
import { told, type Mutant } from './mutant';
import { keep, scores, type Survivor } from './scores';
import { drawnFrom } from './stryker';
import type { Came } from './trial';
import { keptFolder } from './usual';
import { wilson } from './wilson';

const { values } = parseArgs({
  options: {
    folder: { type: 'string' },
    draw: { type: 'string', default: '40' },
    seed: { type: 'string', default: '1' },
    within: { type: 'string', default: '60' },
    again: { type: 'boolean', default: false },
  },
});
const folder = values.folder!;
const [drawn, seed, withinS] = [values.draw, values.seed, values.within].map(Number) as [
  number,
  number,
  number,
];

type Result = Pick<Came, 'fell' | 'timedOut'> & { readonly what: string };

const jury = await Jury.of(withinS * 1000);
const lineOf = (mutant: Mutant) => told(readFileSync(mutant.fileName, 'utf8'), mutant);

async function resultOf(mutant: Mutant): Promise<Result> {
  const { fell, timedOut } = await jury.tries(mutant);
  return { what: lineOf(mutant), ...(fell && { fell }), ...(timedOut && { timedOut }) };
}

/** A draw takes long: what was tried before it was broken off is not tried again. */
async function draw(mutants: readonly Mutant[]): Promise<Result[]> {
  const file = `${keptFolder()}/${folder.replaceAll('/', '-')} ${seed} ${withinS}.jsonl`;
  const before = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];
  const results = before.map((line) => JSON.parse(line) as Result);
  for (const mutant of mutants.slice(results.length)) {
    const result = await resultOf(mutant);
    console.log(result.timedOut ? 'timed out' : result.fell ? 'killed' : 'SURVIVED', result.what);
    appendFileSync(file, `${JSON.stringify(result)}\n`);
    results.push(result);
  }
  return results.slice(0, mutants.length);
}

const all = await drawnFrom(folder, seed);
if (values.again) {
  const score = scores().find((one) => one.folder === folder && one.seed === seed)!;
  const survivors: Survivor[] = [];
  for (const survivor of score.survivors) {
    const { what, seen } = survivor;
    if (seen) {
      survivors.push(survivor);
      continue;
    }
    // Lines are cut short, so that two may read alike: all of them must fall.
    const came = [];
    for (const mutant of all.filter((one) => lineOf(one) === what))
      came.push(await resultOf(mutant));
    const fell = came.every((one) => one.fell) ? came.at(-1)?.fell : undefined;
    console.log(came.length === 0 ? 'NOT THERE' : (fell ?? 'SURVIVED'), what);
    survivors.push({ what, ...(fell && { killedBy: fell }) });
  }
  await keep({ ...score, survivors });
} else {
  const results = await draw(all.slice(0, drawn));
  const survivors = results.filter(({ fell }) => !fell).map(({ what }) => ({ what }));
  const timedOut = results.filter((one) => one.timedOut).length;
  const killed = results.length - survivors.length;
  await keep({
    folder,
    date: new Date().toISOString().slice(0, 10),
    version: (JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version,
    ...{ seed, withinS, mutants: all.length, drawn: results.length },
    ...{ killed: killed - timedOut, timedOut, survivors },
  });
  const [low, high] = wilson(killed, results.length).map((share) => (100 * share).toFixed(0));
  console.log(`${folder}: ${killed} of ${results.length} fell, 95 % interval ${low} to ${high} %`);
}
intoTrust();
