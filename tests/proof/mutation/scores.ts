import { readFileSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';

/** A mutant that no test fell to. */
export interface Survivor {
  readonly what: string;
  /** The test that it falls to since. */
  readonly killedBy?: string;
  /** What somebody saw who looked into it. */
  readonly seen?: string;
}

/** What a draw of a folder's mutants came to. */
export interface Score {
  readonly folder: string;
  readonly date: string;
  readonly version: string;
  readonly seed: number;
  /** How long the tests that were asked of one mutant take without it, at most. */
  readonly withinS: number;
  readonly mutants: number;
  readonly drawn: number;
  readonly killed: number;
  readonly timedOut: number;
  readonly survivors: readonly Survivor[];
}

const file = new URL('./scores.json', import.meta.url);

export const scores = (): Score[] => JSON.parse(readFileSync(file, 'utf8')) as Score[];

/** Keeps a draw: one a folder and seed, the folders in their order. */
export async function keep(score: Score): Promise<void> {
  const others = scores().filter(
    ({ folder, seed }) => folder !== score.folder || seed !== score.seed,
  );
  const all = [...others, score].toSorted(
    (a, b) => a.folder.localeCompare(b.folder) || a.seed - b.seed,
  );
  writeFileSync(file, await format(JSON.stringify(all), { parser: 'json', printWidth: 100 }));
}
