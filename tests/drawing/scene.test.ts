import { describe, expect, it } from 'vitest';
import { newFault } from '../../shared/scenario/newFault';
import { readColumn, readLedger } from '../../shared/trace/trace';
import { usualDisplay } from '../../shared/units/display';
import { coral } from '../../src/drawing/coral';
import { hourlyLedger, sceneAt } from '../../src/drawing/scene';
import { sceneSentence } from '../../src/drawing/sceneSentence';
import { run } from '../../workers/engine/run';
import { scenarioFiles, scenarioFromFile } from '../runs/scenarioFiles';

describe('the drawn tank', () => {
  it.each(scenarioFiles)('shows of %s what the trace holds, at every hour', (name) => {
    const scenario = { ...scenarioFromFile(name), days: 2 };
    const { trace } = run(scenario);
    const hourly = hourlyLedger(trace);
    const start = readColumn(trace, 'volume_l')[0]!;
    for (let hour = 0; hour < trace.rows; hour++) {
      const scene = sceneAt(trace, scenario, hourly, hour);
      const booked = trace.ledger.reduce((sum, { id }) => {
        const row = readLedger(trace, id);
        return hour > 0 ? sum + row[hour]! - row[hour - 1]! : 0;
      }, 0);
      expect(scene.broughtDkh - scene.tookDkh).toBeCloseTo(booked, 10);
      expect(scene.tookDkh).toBeGreaterThanOrEqual(0);
      expect(start + scene.levelShare * Math.max(0.1, scenario.outflows.spareL)).toBeCloseTo(
        readColumn(trace, 'volume_l')[hour]!,
        9,
      );
      expect(scene.skeletonShare).toBeGreaterThanOrEqual(0);
      expect(scene.skeletonShare).toBeLessThanOrEqual(1);
      const told = sceneSentence(scene, scenario.start.clockHour, usualDisplay);
      expect(told).not.toMatch(/NaN|undefined|Infinity|-\d/);
    }
  });

  it('says what fails while it fails, and that pH is above a limit', () => {
    const plan = scenarioFromFile(scenarioFiles.find((name) => name.includes('limewater'))!);
    const stuck = {
      ...plan,
      days: 2,
      faults: [newFault('topOffOn', { day: 1, hour: 2, endsAfterH: 6 })],
      limits: { ...plan.limits, phHighNbs: 8, phHarmNbs: 8.2 },
    };
    const { trace } = run(stuck);
    const hourly = hourlyLedger(trace);
    const at = (hour: number) => sceneAt(trace, stuck, hourly, hour);
    const failed = [...Array(trace.rows).keys()].filter((hour) => at(hour).failing.length > 0);
    expect(failed).toEqual([...failed.keys()].map((i) => i + failed[0]!));
    expect(failed).toHaveLength(7);
    const phs = readColumn(trace, 'ph_nbs');
    for (let hour = 0; hour < trace.rows; hour++) {
      const expected = phs[hour]! > 8.2 ? 'harm' : phs[hour]! > 8 ? 'high' : 'inside';
      expect(at(hour).ph).toBe(expected);
    }
  });

  it('draws corals that only ever grow', () => {
    const span = (grown: number) => {
      const numbers = coral(100, 100, 80, 3, grown).flatMap(({ d }) =>
        d.match(/-?\d+\.\d/g)!.map(Number),
      );
      return 100 - Math.min(...numbers.filter((_, i) => i % 2 === 1));
    };
    const heights = [0, 0.25, 0.5, 0.75, 1].map(span);
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    expect(heights[4]! / heights[0]!).toBeGreaterThan(1.3);
  });
});
