import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { patience } from '../laws/size';
import { withoutUnits } from './unitNames';

const folder = mkdtempSync(join(tmpdir(), 'paper-reef-simulate-'));
afterAll(() => rmSync(folder, { recursive: true }));

function simulate(...args: string[]) {
  return spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/simulate.ts', ...args], {
    encoding: 'utf8',
  });
}

function fileOf(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

interface Told {
  readonly verdict: object;
  readonly crossings: readonly { readonly line: string; readonly timeH: number }[];
  readonly drill: {
    readonly says: readonly string[];
    readonly lines: readonly { readonly line: string; readonly firstH: number }[];
  };
  readonly ensemble: object;
  readonly end: Readonly<Record<string, number>>;
}

const units = /_(h|dkh|nbs|total|mg_l|ppt|c|aragonite|umol_kg|uatm|l|g|pct)$/;
const withoutUnit = ['light', 'flags'];

describe('a run without a browser', () => {
  it(
    'ends with 0, prints the verdict and writes one row an hour, a unit in every header',
    () => {
      const out = join(folder, 'out.csv');
      const args = ['scenarios/limewater-holds.json', '--hours', '30', '--out', out];
      const { status, stdout, stderr } = simulate(...args);
      const lines = readFileSync(out, 'utf8').trimEnd().split('\n');
      const headers = lines[0]!.split(',');
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      expect(stdout).toMatch(/This plan holds \d.* dKH for 30 hours/);
      expect(lines).toHaveLength(1 + 31);
      expect(headers.filter((id) => !units.test(id) && !withoutUnit.includes(id))).toEqual([]);
      expect(headers.slice(0, 5)).toEqual(
        'time_h alkalinity_dkh ph_nbs ph_total calcium_mg_l'.split(' '),
      );
      expect(lines.every((line) => line.split(',').length === headers.length)).toBe(true);
      const last = lines.at(-1)!.split(',').map(Number);
      expect(last.every(Number.isFinite)).toBe(true);
      expect(last[0]).toBe(30);
    },
    patience,
  );

  it(
    'shows letters that would steer a terminal by their numbers, in a title as in a complaint',
    () => {
      const steering = '\\u001b]0;x\\u0007\\u001b[2J\\u009b31m\\u202e';
      const file = (days: number) =>
        `{"type":"paper-reef/scenario","version":2,"title":"${steering}","days":${days},"${days ? 'place' : steering}":"${steering}","tank":{"volumeL":100,"alkalinityDkh":8}}`;
      for (const days of [0.1, 0]) {
        const { stdout, stderr } = simulate(fileOf('steering.json', file(days)));
        expect(`${stdout}${stderr}`.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
        expect(`${stdout}${stderr}`).toContain('U+001B');
      }
    },
    patience,
  );

  it(
    'gives verdict, lines, crossings and drill as JSON, a unit in the name of every number',
    () => {
      const args = ['scenarios/drill-stuck-pump.json', '--hours', '24', '--members', '5', '--json'];
      const { status, stdout, stderr } = simulate(...args);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      const told = JSON.parse(stdout) as Told;
      expect(withoutUnits(told)).toEqual([]);
      expect(told).toMatchObject({ type: 'paper-reef/verdict', hours: 24, stopped: null });
      expect(told.verdict).toMatchObject({ insideLimits: false });
      const phHigh = told.drill.lines.find(({ line }) => line === 'phHigh')!;
      // The same drill as text: "03:13  pH passes 8.6".
      expect(phHigh).toMatchObject({ quantity: 'ph', limitPhNbs: 8.6, passed: true });
      expect(Math.round((phHigh.firstH - 3) * 60)).toBe(13);
      const crossed = told.crossings.find(({ line }) => line === 'phHigh')!;
      expect(crossed.timeH).toBeCloseTo(phHigh.firstH, 6);
      expect(told.drill.says.join(' ')).toContain('pH');
      expect(told.ensemble).toMatchObject({ members: 5, seed: 1 });
      expect(told.end.time_h).toBe(24);
    },
    patience,
  );

  it(
    'ends with 2 and every problem of a bad file with its path',
    () => {
      const bad = fileOf(
        'bad.json',
        '{"type":"paper-reef/scenario","version":1,"title":"x","days":0,"tank":{"volumeGal":5,"alkalinityDkh":8}}',
      );
      const { status, stdout, stderr } = simulate(bad);
      expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
      expect(stderr).toMatch(/3 problems/);
      for (const path of ['days', 'tank.volumeGal', 'tank.volumeL']) expect(stderr).toContain(path);
    },
    patience,
  );

  it(
    'tells a drill moment by moment, and the quantiles of an ensemble, the same for the same seed',
    () => {
      const args = ['scenarios/drill-stuck-pump.json', '--hours', '24', '--members', '20'];
      const [first, second] = [simulate(...args), simulate(...args)];
      expect(first.status).toBe(0);
      expect(first.stdout).toMatch(/02:00 {2}top-off pump sticks on\n {2}03:13 {2}pH passes 8.6/);
      expect(first.stdout).toMatch(/20 tanks, seed 1; 5 \/ 50 \/ 95 %:/);
      expect(first.stdout).toMatch(
        /pH above 9: \d+\.\d % pass it, after .* worst 8\.|pH above 9: /,
      );
      expect(second.stdout).toBe(first.stdout);
    },
    patience,
  );

  it.each([
    ['no file at all', []],
    ['a file that is not there', [join(folder, 'none.json')]],
    ['a text that is no JSON', [fileOf('junk.json', '{"type": NaN')]],
    ['hours that are no number', ['scenarios/do-nothing.json', '--hours', 'many']],
    ['hours that would never end', ['scenarios/do-nothing.json', '--hours', '1e9']],
    ['a crowd', ['scenarios/drill-stuck-pump.json', '--members', '1e9']],
    ['an option that there is not', ['scenarios/do-nothing.json', '--fast']],
  ])(
    'ends with 2 and a reason for %s',
    (_, args) => {
      const { status, stderr } = simulate(...args);
      expect(status).toBe(2);
      expect(stderr).not.toMatch(/^\s+at /m);
      expect(stderr.trim().length).toBeGreaterThan(20);
    },
    patience,
  );

  it('ends quietly when its reader has seen enough', () => {
    const { status, stderr, stdout } = spawnSync(
      'sh',
      ['-c', 'npx tsx src/cli/simulate.ts scenarios/limewater-holds.json | head -n 1'],
      { encoding: 'utf8' },
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.trim().split('\n')).toHaveLength(1);
  });

  it('refuses an ensemble of a plan in which nothing breaks', () => {
    const { status, stdout, stderr } = simulate('scenarios/limewater-holds.json', '--members', '3');
    expect(status).toBe(2);
    expect(stderr).toContain('this plan has no fault');
    expect(stdout).not.toContain('NaN');
  });
});
