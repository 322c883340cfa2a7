import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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

/** What is run together: a file of advice takes as long as a folder of the others. */
const parts = [
  ...readdirSync('tests/advice')
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `tests/advice/${name}`),
  ...['tests/laws', 'tests/runs', 'tests/log', 'tests/state'],
];

/** The laws and the whole runs at full size, and what came of each test. */
export const runLaws = (seed: number): LawFile[] =>
  parts
    .flatMap((part) => kept(part, seed, () => runPart(part, seed)))
    .toSorted((a, b) => a.name.localeCompare(b.name));

function runPart(part: string, seed: number): LawFile[] {
  const folder = mkdtempSync(join(tmpdir(), 'paper-reef-proof-'));
  const report = join(folder, 'laws.json');
  spawnSync(
    'npx',
    [
      'vitest',
      'run',
      part,
      // The page of proof makes the twins itself, for its table.
      '--exclude=tests/log/twins/*.test.ts',
      '--reporter=dot',
      '--reporter=json',
    ].concat(`--outputFile.json=${report}`),
    {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, LAW_SCALE: '1', LAW_SEED: String(seed) },
    },
  );
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  rmSync(folder, { recursive: true });
  return testResults.map(({ name, status, message, assertionResults }) => ({
    name: name.replace(/^.*\/(tests\/)/, '$1'),
    tests:
      assertionResults.length === 0 && status === 'failed'
        ? [{ title: `could not be loaded: ${message.split('\n')[0]}`, passed: false }]
        : assertionResults.map((test) => ({
            title: test.fullName,
            passed: test.status === 'passed',
          })),
  }));
}
