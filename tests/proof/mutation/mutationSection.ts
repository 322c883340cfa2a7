import { table } from '../tables';
import type { Score, Survivor } from './scores';
import { wilson } from './wilson';

const percent = (share: number) => `${Math.round(share * 100)} %`;

function row(score: Score): string[] {
  const { folder, date, version, seed, withinS, mutants, drawn, killed, timedOut } = score;
  const fell = killed + timedOut;
  const since = score.survivors.filter(({ killedBy }) => killedBy).length;
  return [
    folder,
    `${version}, ${date}`,
    String(mutants),
    `${drawn} (seed ${seed})`,
    `${withinS} s`,
    ...[killed, timedOut, drawn - fell].map(String),
    `${percent(fell / drawn)} (${wilson(fell, drawn).map(percent).join(' to ')})`,
    String(since),
  ];
}

const line = ({ what, killedBy, seen }: Survivor) =>
  `- \`${what.replaceAll('`', 'ˋ')}\`${killedBy ? `; falls to ${killedBy} since` : ''}${seen ? `; ${seen}` : ''}`;

/** How many of the mistakes that a program makes in the code the unit tests see. */
export function mutationSection(scores: readonly Score[]): string {
  const heads = [
    ...['folder', 'of', 'mutants', 'drawn', 'tests asked', 'killed', 'timed out', 'survived'],
    ...['fell (95 % interval)', 'of the survivors, killed by a test since'],
  ];
  return `## Mistakes made on purpose

A mutant is the code with one mistake that StrykerJS makes (a sign turned, a condition always true, a block left out). Drawn by a seed from all of a folder, each alone, it falls where a unit test that imports the file is red, or runs eight times as long and half a minute more; asked are as many tests, the fastest first, as take the time in the table without a mutant: what survived may still fall to a slower one, and the whole of \`npm test\` sees no fewer than these. Types are not asked. A sample of this size tells the share no better than its interval (Wilson 1927); it counts mistakes that change nothing anybody could see among those that survived. The share is that of the draw, before a survivor was looked at: tests that were written since do not count in it. These draws are made by \`npm run mutants\`, apart from the rest of this page.

${table(heads, scores.map(row))}

What survived:

${scores.flatMap(({ survivors }) => survivors.map(line)).join('\n')}`;
}
