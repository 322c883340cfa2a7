import { readFileSync, writeFileSync } from 'node:fs';
import { mutationSection } from './mutationSection';
import { scores } from './scores';

const nextHead = '\n\n## Attacks on what is kept';

/** Puts the section anew into the page of proof as it stands, which takes hours to make whole. */
export function intoTrust(): void {
  const file = new URL('../../../TRUST.md', import.meta.url);
  const section = mutationSection(scores());
  const [head] = section.split('\n');
  const [before, after] = readFileSync(file, 'utf8').split(nextHead) as [string, string];
  const kept = before.split(`\n\n${head}\n`)[0]!;
  writeFileSync(file, `${kept}\n\n${section}${nextHead}${after}`);
}
