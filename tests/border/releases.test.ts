import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { understand, previewImport } from '../../shared/log/csv/importLog';
import { readLink } from '../../shared/scenario/link';
import { parseScenarioText } from '../../shared/scenario/parse';
import { readColumn } from '../../shared/trace/trace';
import { csvRows } from '../../src/diary/csv/csvRows';
import { readEverything } from '../../src/store/everything';
import { readTank } from '../../src/store/readTank';
import { run } from '../../workers/engine/run';

/**
 * What each release kept, as its own code wrote it: the bench or the tank in the browser's store, a
 * backup, a plan, a link and a log as files. A release joins them and none ever leaves.
 */
const folder = new URL('./releases/', import.meta.url);
const releases = readdirSync(folder).sort();
const file = (release: string, name: string) => new URL(`${release}/${name}`, folder);
const has = (release: string, name: string) => existsSync(file(release, name));
const text = (release: string, name: string) => readFileSync(file(release, name), 'utf8');

const DKH = [8.4, 8.1, 8.2, 7.8];
const kept = (release: string) =>
  JSON.parse(text(release, has(release, 'tank.json') ? 'tank.json' : 'bench.json')) as unknown;

it('is there of every release, and of this one: else run tests/border/keepRelease.ts', () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
  const before = ['0.1.0', '0.2.0', '0.3.0', '0.4.0', '0.5.0', '0.6.0'];
  expect(releases).toEqual(expect.arrayContaining([...before, version]));
});

describe.each(releases)('what %s kept', (release) => {
  it('opens whole from the browser’s store, and every plan of it runs', () => {
    const { tank, problems } = readTank(kept(release));
    expect(problems).toEqual([]);
    const { plans, selected, since, before } = tank!.bench;
    expect(plans.map(({ name }) => name)).toEqual(["Today's plan", 'Trial A', 'With a pump']);
    const { topOff, corals } = plans[1]!.scenario;
    expect(topOff.gramsPerL).toBe(1.15);
    // 1.3 was typed; up to format 2 what food takes, 0.02 here, came on top of that.
    const { version } = JSON.parse(text(release, 'plan.json')) as { version: number };
    expect(corals.useDkhPerDay).toBeCloseTo(version < 3 ? 1.32 : 1.3, 2);
    expect(selected).toBe(plans[2]!.id);
    // Up to 0.6.0 nobody was asked what the tank runs by.
    const asked = JSON.stringify(kept(release)).includes('"since"');
    expect([since, before.length]).toEqual(asked ? ['2026-03-04T10:30', 1] : ['', 0]);
    for (const { scenario } of plans) {
      const { trace, stopped } = run({ ...scenario, days: 2 });
      expect(stopped).toBeUndefined();
      expect(readColumn(trace, 'alkalinity_dkh').every(Number.isFinite)).toBe(true);
    }
  });

  it('holds its log', () => {
    const { log } = readTank(kept(release)).tank!;
    if (!has(release, 'tank.json')) {
      expect(log.readings).toEqual([]);
      return;
    }
    expect(log.readings.map(({ alkalinityDkh }) => alkalinityDkh)).toEqual(DKH);
    expect([log.targetDkh, log.scoopG]).toEqual([8.2, 4.5]);
    expect(log.readings[2]).toMatchObject({ additive: 'sodiumBicarbonate', grams: 12 });
  });

  it('opens as a file', () => {
    const parsed = parseScenarioText(text(release, 'plan.json'));
    expect(parsed.ok && parsed.scenario.dosers).toHaveLength(2);
    // Up to 0.7.0 nobody watched oxygen.
    expect(parsed.ok && parsed.scenario.limits).toMatchObject({
      oxygenLowMgPerL: 4,
      oxygenHarmMgPerL: 2.8,
    });
    expect(parsed.ok && parsed.scenario.oxygen.stocking).toBe('usual');
  });

  it.runIf(has(release, 'everything.json'))('comes back from a backup', () => {
    const read = readEverything(text(release, 'everything.json'));
    if (!read.ok) throw new Error(read.problems.join('\n'));
    const { tanks, preferences } = read.everything;
    expect(tanks.map(({ name }) => name)).toEqual([
      'The lagoon of the field school',
      'Raceway at Sallow Creek',
    ]);
    expect(tanks.map(({ log }) => log.readings.length)).toEqual([4, 1]);
    expect(preferences).toMatchObject({ theme: 'dark', volume: 'US gal' });
  });

  it.runIf(has(release, 'link.txt'))('opens from a link', async () => {
    const read = await readLink(text(release, 'link.txt').trim().replace('plan/', ''));
    expect(read.ok && read.plans.map(({ name }) => name)).toEqual(['Trial A', 'With a pump']);
  });

  it.runIf(has(release, 'log.csv'))('reads its CSV back', async () => {
    const rows = await csvRows(text(release, 'log.csv'));
    const { taken, refused } = previewImport(rows, understand(rows), [], '2028-01-01T00:00');
    expect(refused).toEqual([]);
    expect(taken.map(({ alkalinityDkh }) => alkalinityDkh)).toEqual(DKH);
  });
});

it('a backup whose plans are of format 1 opens, as its files do', () => {
  const tanks = [{ id: 'tank-1', name: 'old', bench: kept('0.1.0') }];
  const read = readEverything(
    JSON.stringify({ type: 'paper-reef/everything', version: 1, tanks, preferences: {} }),
  );
  expect(read.ok && read.everything.tanks[0]!.bench.plans).toHaveLength(3);
});
