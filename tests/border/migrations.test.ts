import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenarioText } from '../../shared/scenario/parse';
import { SCENARIO_VERSION } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { lineOf } from '../../shared/verdict/lineResult';
import { scenarioOf } from '../../shared/scenario/write';
import { runDrill } from '../../workers/engine';
import { run } from '../../workers/engine/run';

const folder = new URL('./version1/', import.meta.url);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');

/** Alkalinity at the end of each file as version 0.1.0, which wrote them, gave it, dKH. */
const endDkhThen: Record<string, number> = {
  'beyond-limewater.json': 8.785,
  'do-nothing.json': 2.392,
  'limewater-holds.json': 8.616,
  'water-changes-high-salt.json': 8.262,
  'water-changes-low-salt.json': 6.074,
};

/** Saturated limewater is 0.27 % stronger since 0.7.0, which sixty days of it show. */
const SATURATED = ['beyond-limewater.json'];

describe.each(readdirSync(folder))('%s of format 1', (name) => {
  it('opens, and means today what it meant then', () => {
    expect(JSON.parse(read(name)).version).toBe(1);
    const parsed = parseScenarioText(read(name));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const { scenario } = parsed;
    expect(scenario.version).toBe(SCENARIO_VERSION);
    expect(scenario.corals.skeletonMgPerCa).toBe(0);
    expect(scenario.gas.enhancement).toBe('off');
    const end = readColumn(run(scenario).trace, 'alkalinity_dkh').at(-1)!;
    const off = Math.abs(end - endDkhThen[name]!);
    expect(off).toBeLessThan(SATURATED.includes(name) ? 0.02 : 0.005);
  });
});

const folder2 = new URL('./version2/', import.meta.url);
const read2 = (name: string) => readFileSync(new URL(name, folder2), 'utf8');

/** Alkalinity at the end as version 0.6.0 gave it, to the digit that its answer states, dKH. */
const endDkhIn2: Record<string, number> = {
  'do-nothing.json': 2.4,
  'over-fed.json': 4.8,
  'pico-tank.json': 8.9,
  'recovery-from-six.json': 8.6,
  'water-changes-high-salt.json': 8.3,
  'water-changes-low-salt.json': 6.1,
};

describe.each(readdirSync(folder2))('%s of format 2', (name) => {
  const parsed = parseScenarioText(read2(name));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const { scenario } = parsed;
  const file = JSON.parse(read2(name));

  it('keeps the limits, the chalk and the reactor that it implied', () => {
    expect(file.version).toBe(2);
    const { alkalinityLowDkh = 8, alkalinityHighDkh = 12 } = file.limits ?? {};
    expect(scenario.limits).toMatchObject({ alkalinityLowDkh, alkalinityHighDkh });
    expect(scenario.limits.unionisedAmmoniaMgPerL).toBe(0.05);
    expect(scenario.precipitation.mode).toBe(file.precipitation?.mode ?? 'guarded');
    expect(scenario.calciumReactor.dripLPerH).toBe(file.mediaReactor?.dripLPerH ?? 0);
    expect(scenario.waterChanges.salt.alkalinityDkh).toBe(
      file.waterChanges?.salt?.alkalinityDkh ?? 8,
    );
  });

  it.runIf(name in endDkhIn2)('ends where it ended then', () => {
    const end = readColumn(run(scenario).trace, 'alkalinity_dkh').at(-1)!;
    expect(end).toBeCloseTo(endDkhIn2[name]!, 1);
  });
});

const folder3 = new URL('./version3/', import.meta.url);
const read3 = (name: string) => readFileSync(new URL(name, folder3), 'utf8');

/**
 * Alkalinity at the end as version 0.7.0 gave it at a thousandth of its tolerance, dKH (at its usual
 * one the first was 2.39299): these files say nothing of food.
 */
const endDkhIn3: Record<string, number> = {
  'do-nothing.json': 2.39341,
  'water-changes-high-salt.json': 8.15788,
  'water-changes-low-salt.json': 5.94091,
};

describe.each(readdirSync(folder3))('%s of format 3', (name) => {
  it('is fed as it was then, and ends where it ended', () => {
    const file = JSON.parse(read3(name));
    expect([file.version, file.food]).toEqual([3, undefined]);
    const parsed = parseScenarioText(read3(name));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    expect(parsed.scenario.food.gramsPerDay).toBe(1);
    const end = readColumn(run(parsed.scenario).trace, 'alkalinity_dkh').at(-1)!;
    expect(end).toBeCloseTo(endDkhIn3[name]!, 3);
  });
});

const folder4 = new URL('./version4/', import.meta.url);
const read4 = (name: string) => readFileSync(new URL(name, folder4), 'utf8');

/** pH at its highest, and when, as version 0.11.0 gave it. */
const peakIn4: Record<string, readonly [phNbs: number, timeH: number]> = {
  'drill-doser-stuck.json': [9.0294, 4.0944],
  'drill-power-cut.json': [8.3512, 42.173],
  'drill-stuck-pump.json': [9.1854, 5.3342],
};

describe.each(readdirSync(folder4))('%s of format 4', (name) => {
  it('fails for as long as it failed then, and whatever is done lasts as long', () => {
    const file = JSON.parse(read4(name));
    expect(file.version).toBe(4);
    const parsed = parseScenarioText(read4(name));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const { faults, responses } = parsed.scenario;
    const then = (things: { hours?: number }[] = []) => things.map(({ hours = 6 }) => hours);
    expect(faults.map(({ endsAfterH }) => endsAfterH)).toEqual(then(file.faults));
    expect(responses.map(({ hours }) => hours)).toEqual(then(file.responses));
  });

  it.runIf(name in peakIn4)('peaks where and when it peaked', () => {
    const parsed = parseScenarioText(read4(name));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const { worst, worstH } = lineOf(runDrill(parsed.scenario).lines, 'phHigh');
    expect([worst, worstH]).toEqual(peakIn4[name]!.map((value) => expect.closeTo(value, 3)));
  });
});

it('a scenario written in code may still say a fault’s end as files did', () => {
  const stuck = { kind: 'topOffOn', day: 2 };
  const [then, now] = [{ hours: 3 }, { endsAfterH: 3 }].map((end) =>
    scenarioOf({ faults: [{ ...stuck, ...end }] }),
  );
  expect(then).toEqual(now);
});

describe('a file between versions', () => {
  const withVersion = (version: unknown) =>
    parseScenarioText(JSON.stringify({ ...JSON.parse(read('do-nothing.json')), version }));

  it('keeps the hours of its pumps as a schedule', () => {
    const parsed = parseScenarioText(read('beyond-limewater.json'));
    expect(parsed.ok && parsed.scenario.dosers[0]?.schedule).toMatchObject({
      way: 'spread',
      fromHour: 0,
      hours: 24,
    });
  });

  it.each([0, -1, 1.5, SCENARIO_VERSION + 1, 99, 'two', null])(
    'is refused with a reason: version %s',
    (version) => {
      const parsed = withVersion(version);
      expect(parsed.ok ? [] : parsed.problems.map(({ path }) => path)).toEqual(['version']);
    },
  );
});
