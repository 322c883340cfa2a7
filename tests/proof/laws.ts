import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

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

/** Runs the laws and the whole runs at full size, and says what came of each test. */
export function runLaws(seed: number): LawFile[] {
  const folder = mkdtempSync(join(tmpdir(), 'paper-reef-proof-'));
  const report = join(folder, 'laws.json');
  spawnSync(
    'npx',
    [
      'vitest',
      'run',
      'tests/advice',
      'tests/laws',
      'tests/runs',
      'tests/log',
      'tests/state',
      // The page of proof makes the twins itself, for its table.
      '--exclude=tests/log/twins.test.ts',
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
  return testResults
    .map(({ name, status, message, assertionResults }) => ({
      name: name.replace(/^.*\/(tests\/)/, '$1'),
      tests:
        assertionResults.length === 0 && status === 'failed'
          ? [{ title: `could not be loaded: ${message.split('\n')[0]}`, passed: false }]
          : assertionResults.map((test) => ({
              title: test.fullName,
              passed: test.status === 'passed',
            })),
    }))
    .toSorted((a, b) => a.name.localeCompare(b.name));
}
