import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { scenarioOf } from '../../shared/scenario/write';
import { jsonText } from '../../src/cli/json';
import { readTanks } from '../../src/cli/readTanks';
import { tankAnswer } from '../../src/cli/tankAnswer';
import { tankJson } from '../../src/cli/tankJson';
import { tankText } from '../../src/cli/tankSentences';
import { everythingText, type Everything } from '../../src/store/everything';
import { openingPlans } from '../../src/store/plans';
import { newTank } from '../../src/store/tanks';
import type { LogAnswer } from '../../workers/studies/answerLog';
import { patience } from '../laws/size';
import { withoutUnits } from './unitNames';

const folder = mkdtempSync(join(tmpdir(), 'paper-reef-answer-'));
afterAll(() => rmSync(folder, { recursive: true }));

const release = 'tests/border/releases/0.7.0';
const answer = (...args: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/answer.ts', ...args], {
    encoding: 'utf8',
  });

function fileOf(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** A backup with one tank, a plan as it opens and six readings. */
const pool: Everything = {
  tanks: [
    {
      ...newTank('tank-1', 'A pool at Tarn Hollow', openingPlans(scenarioOf({}))),
      log: {
        ...emptyLog,
        supplies: [{ id: 'tests', left: 20, countedAt: '2026-03-06T10:30' }],
        readings: [8.4, 8.1, 8.2, 7.8, 7.7, 7.5].map((alkalinityDkh, i) => ({
          ...{ at: `2026-03-0${i + 1}T10:30`, alkalinityDkh },
        })),
      },
    },
  ],
  preferences: {},
};

/** A backup with one tank, changed by hand. */
function spoilt(change: (tank: Record<string, never>) => object): string {
  const backup = JSON.parse(readFileSync(`${release}/everything.json`, 'utf8')) as {
    tanks: Record<string, never>[];
  };
  return JSON.stringify({ ...backup, tanks: backup.tanks.slice(0, 1).map(change) });
}

interface Told {
  readonly tanks: readonly {
    readonly answer: {
      readonly use: Readonly<Record<string, number>>;
      readonly forecast: readonly { readonly afterH: number }[];
      readonly nextTest: { readonly at: string; readonly inDays: number };
    };
  }[];
}

describe('the answers to a log without a browser', () => {
  it(
    'are what the page works out of the same backup, in JSON and in its own sentences',
    async () => {
      const [file, now] = [fileOf('backup.json', everythingText(pool)), '2026-03-07T12:00'];
      const { status, stdout, stderr } = answer(
        ...([file, '--tank=tank-1', '--now', now, '--away', '3', '--json'] as const),
      );
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      const { tanks } = JSON.parse(stdout) as Told;
      expect(withoutUnits(tanks)).toEqual([]);
      const own = await tankAnswer(pool.tanks[0]!, now, { days: 3, visitDays: 0 });
      expect(tanks).toEqual([JSON.parse(jsonText(tankJson(own)))]);

      const { use, forecast, nextTest } = tanks[0]!.answer;
      const page = (own.answer as LogAnswer).useNow;
      expect(use.dkhPerDay).toBeCloseTo(page.dkhPerDay, 6);
      expect((use.highDkhPerDay! - use.lowDkhPerDay!) / 4).toBeCloseTo(
        page.standardErrorDkhPerDay,
        6,
      );
      expect(forecast.at(-1)!.afterH).toBeGreaterThan(27 * 24);
      // The last reading is of the sixth of March, 10:30.
      const day = 6 + Math.floor((10.5 + nextTest.inDays * 24) / 24);
      expect(Number(nextTest.at.slice(8, 10))).toBe(day);

      const text = tankText(own);
      expect(text).toMatch(/^A pool at Tarn Hollow\n\nThe tank uses \d\.\d+ ± /);
      expect(text).toMatch(/\n\nLimewater first\. .*\n\nTwo-part pumps\. .*\n\nWater changes/s);
      expect(text).toMatch(/\n\n(It can be left alone for|Not for) 3 days.*\nWorst while nobody/s);
      expect(text).toMatch(/\n\nalkalinity tests in the kit: Order (by|now)/);
      expect(text).toMatch(
        /\nRuns out first: alkalinity tests in the kit, in \d+ days at the soonest/,
      );
      expect(text).not.toMatch(/NaN|undefined/);
    },
    // All that a log is asked, twice over.
    patience * 2,
  );

  it(
    'are refused with 2 and every problem of a bad file',
    () => {
      const readings = Array.from({ length: 40 }, () => ({ at: '2026-03-01', alkalinityDkh: 8 }));
      const bad = spoilt((tank) => ({ ...tank, log: { readings, targetDkh: 900 } }));
      const { status, stdout, stderr } = answer(fileOf('bad.json', bad), '--json');
      expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
      expect(stderr.trimEnd().split('\n')).toHaveLength(1 + 41);
      for (const place of ['41 problems', 'readings[0].at', 'readings[39].at', 'targetDkh']) {
        expect(stderr).toContain(place);
      }
    },
    patience,
  );

  it.each([
    ['a plan', () => readFileSync(`${release}/plan.json`, 'utf8'), /npm run simulate/],
    ['a text that is no JSON', () => '{"tanks": NaN', /JSON/],
    ['a list', () => '[]', /./],
    ['nothing', () => 'null', /./],
    ['a tank without a plan', () => '{"log":{"readings":[]}}', /./],
  ])('know %s for no tank', (_, text, reason) => {
    const read = readTanks(text());
    expect(!read.ok && read.problems.join('\n')).toMatch(reason);
  });

  it('take a record of one tank, and a bench from before there were tanks', () => {
    for (const path of [`${release}/tank.json`, 'tests/border/releases/0.1.0/bench.json']) {
      expect(readTanks(readFileSync(path, 'utf8'))).toMatchObject({ ok: true });
    }
  });
});
