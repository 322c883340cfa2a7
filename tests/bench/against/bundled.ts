import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { bundle } from '../bundle.mjs';

export type Subject = typeof import('./subject');

/** A tree's engine, and where its scenarios are. */
export interface Tree {
  readonly subject: Subject;
  readonly scenarios: string;
}

const SUBJECT = 'tests/bench/against/subject.ts';

/** A commit's files, unpacked beside the other results; its engine bundled as this tree's is. */
export async function bundled(commit: string): Promise<Tree> {
  const root = `test-results/bench/${commit}`;
  mkdirSync(root, { recursive: true });
  const packed = execFileSync('git', ['archive', commit], { maxBuffer: 2 ** 30 });
  execFileSync('tar', ['-x', '-C', root], { input: packed });
  mkdirSync(`${root}/tests/bench/against`, { recursive: true });
  copyFileSync(SUBJECT, `${root}/${SUBJECT}`);
  return bundledAt(root, `${root}/bundled`);
}

/** The subject of the tree at a path, bundled. */
export async function bundledAt(root: string, outDir: string): Promise<Tree> {
  await bundle([`${root}/${SUBJECT}`], outDir);
  const subject = await import(pathToFileURL(`${outDir}/subject.mjs`).href);
  return { subject, scenarios: `${root}/scenarios` };
}
