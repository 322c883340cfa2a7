import { readdirSync } from 'node:fs';
import { madeInChild } from './inChild';
import { kept } from './kept';

export interface LawFile {
  readonly name: string;
  readonly tests: readonly { readonly title: string; readonly passed: boolean }[];
}

interface Report {
  testResults: {
    name: string;
    status: string;
    message: string;
    assertionResults: { fullName: string; status: string }[];
  }[];
}

const testsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    // The page of proof makes the twins itself, for its table.
    .filter((name) => name.endsWith('.test.ts') && !name.startsWith('twins/'))
    .map((name) => `${folder}/${name}`)
    .toSorted();

/** The laws and the whole runs at full size, file by file, and what came of each test: jobs to be done. */
export const lawJobs = (seed: number): (() => Promise<LawFile>)[] =>
  ['tests/advice', 'tests/laws', 'tests/runs', 'tests/log', 'tests/state']
    .flatMap(testsIn)
    .map((file) => () => kept(file, file, seed, () => runFile(file, seed)));

async function runFile(file: string, seed: number): Promise<LawFile> {
  const { testResults } = await madeInChild<Report>(
    (report) => [
      'vitest',
      'run',
      file,
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { LAW_SCALE: '1', LAW_SEED: String(seed) },
  );
  const { status, message, assertionResults } = testResults[0]!;
  const unloaded = { title: `could not be loaded: ${message.split('\n')[0]}`, passed: false };
  return {
    name: file,
    tests:
      assertionResults.length === 0 && status === 'failed'
        ? [unloaded]
        : assertionResults.map(({ fullName, status: came }) => ({
            title: fullName,
            passed: came === 'passed',
          })),
  };
}
