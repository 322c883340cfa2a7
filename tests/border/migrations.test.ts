import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenarioText } from '../../shared/scenario/parse';
import { readColumn } from '../../shared/trace/trace';
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

describe.each(readdirSync(folder))('%s of format 1', (name) => {
  it('opens, and means today what it meant then', () => {
    expect(JSON.parse(read(name)).version).toBe(1);
    const parsed = parseScenarioText(read(name));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const { scenario } = parsed;
    expect(scenario.version).toBe(2);
    expect(scenario.corals.skeletonMgPerCa).toBe(0);
    expect(scenario.gas.enhancement).toBe('off');
    const end = readColumn(run(scenario).trace, 'alkalinity_dkh').at(-1)!;
    expect(end).toBeCloseTo(endDkhThen[name]!, 2);
  });
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

  it.each([0, -1, 1.5, 3, 99, 'two', null])('is refused with a reason: version %s', (version) => {
    const parsed = withVersion(version);
    expect(parsed.ok ? [] : parsed.problems.map(({ path }) => path)).toEqual(['version']);
  });
});
