import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { protectionIds } from '../../shared/verdict/bought';
import { boughtText } from '../../src/say/drill/boughtText';
import { lineOf } from '../../shared/verdict/lineResult';
import { usualOptions } from '../../workers/engine/simulation';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { protectionsAgainst, protectionsOf } from '../../workers/studies/drill/protections';
import { patience, runsOf } from '../laws/size';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyFailure } from './anyFailure';

const keep = async (scenario: Scenario) =>
  (await protectionsOf(scenario, usualHandAir, usualOptions, async () => true))!;

const stuckPump = scenarioFromFile('drill-stuck-pump.json');
const stuck = {
  ...stuckPump,
  days: 4,
  faults: [newFault('topOffOn', { day: 1, hour: 2, endsAfterH: 6 })],
};

describe('what keeps a failure from doing harm', () => {
  it('is worked out with the same drill: the minutes are those of two runs', async () => {
    const found = await keep(stuck);
    const alone = { ...stuck, faults: [newFault('topOffOn', { day: 1, hour: 2, endsAfterH: 94 })] };
    const firstH = (scenario: Scenario) => lineOf(runDrill(scenario).lines, 'phHigh').firstH;
    const without = firstH(alone)! - 2;
    const { topOff } = stuck;
    const limited = alone.faults.map((fault) => ({ ...fault, runLimit: 'works' as const }));
    const changed: Record<string, Scenario> = {
      halfStrength: { ...alone, topOff: { ...topOff, gramsPerL: topOff.gramsPerL / 2 } },
      halfPump: { ...alone, topOff: { ...topOff, pumpLPerH: topOff.pumpLPerH / 2 } },
      runLimit: { ...alone, topOff: { ...topOff, runLimitMinPerH: 10 }, faults: limited },
      plain: { ...alone, topOff: { ...topOff, additive: 'none' } },
    };
    for (const [id, scenario] of Object.entries(changed)) {
      const one = found.protections.find(({ act }) => act === id)!;
      expect(one.line.id, id).toBe('phHigh');
      expect(one.before.asSetH).toBeCloseTo(without, 6);
      const withIt = firstH(scenario);
      if (withIt === undefined) expect(one.after.asSetH).toBeUndefined();
      else expect(one.after.asSetH! / (withIt - 2)).toBeCloseTo(1, 4);
    }
    // A pump of half the litres takes twice as long to pour in what passes the line: by hand.
    const half = found.protections.find(({ act }) => act === 'halfPump')!;
    expect(half.after.asSetH! / without).toBeGreaterThan(1.9);
    // A second switch two litres up ends it: the first in the list, and no limit passed.
    expect(found.protections[0]).toMatchObject({ act: 'secondSwitch', gain: 'kept' });
    expect(found.protections[0]!.passes[1]).toBe(0);
    const switched = runDrill({
      ...alone,
      topOff: { ...topOff, secondSwitchL: 2 },
      faults: alone.faults.map((fault) => ({ ...fault, secondSwitch: 'works' as const })),
    });
    const { worst } = lineOf(switched.lines, 'phHigh');
    expect(found.protections[0]!.worst[1]).toBeCloseTo(worst, 6);
  });

  it('halves what a stuck dosing pump does with a stock of half the strength', async () => {
    const drill = scenarioFromFile('drill-doser-stuck.json');
    const { protections } = await keep(drill);
    const weaker = protections.find(({ act }) => act === 'weakerStock')!;
    const dosers = drill.dosers.map((doser) => ({
      ...doser,
      mlPerDay: doser.mlPerDay * 2,
      recipe: doser.recipe.map((part) => ({ ...part, gramsPerL: part.gramsPerL / 2 })),
    }));
    const faults = drill.faults.map((fault) => ({ ...fault, endsAfterH: 96 - fault.hour }));
    const { worst } = lineOf(runDrill({ ...drill, dosers, faults }).lines, weaker.line.id);
    expect(weaker.worst[1]).toBeCloseTo(worst, 6);
  });

  it('is offered where it fits, and each has a failure that it fits', () => {
    const against = (kind: Parameters<typeof newFault>[0], own = {}) =>
      protectionsAgainst({ ...stuck, faults: [newFault(kind, own)] });
    expect(against('powerCut')).toEqual(['batteryAir']);
    expect(against('heater', { endTempC: 31 })).toEqual(['twoHeaters', 'cutOut']);
    expect(against('heater', { endTempC: 18 })).toEqual(['twoHeaters']);
    expect(against('doserOff')).toEqual([]);
    const kinds = ['topOffOn', 'siphon', 'doserOn', 'heater', 'powerCut', 'wrongNewWater'] as const;
    const changing = { ...stuck, waterChanges: { ...stuck.waterChanges, percent: 10 } };
    const all = kinds.flatMap((kind) =>
      protectionsAgainst({ ...changing, faults: [newFault(kind)] }),
    );
    expect(new Set(all)).toEqual(new Set(protectionIds));
    const plain = { ...stuck, topOff: { ...stuck.topOff, additive: 'none' as const } };
    expect(protectionsAgainst(plain)).toContain('halfPump');
    expect(protectionsAgainst(plain)).not.toContain('plain');
    const bare = { ...stuck, topOff: { ...stuck.topOff, reservoirL: 0 } };
    expect(protectionsAgainst(bare)).toEqual([]);
  });

  it(
    'never brings the line that it is told by sooner, and passes no more of them first',
    async () => {
      let kept = 0;
      await fc.assert(
        fc.asyncProperty(anyFailure, async (scenario) => {
          const { protections, worse, followedH } = await keep(scenario);
          for (const one of protections) {
            const [before, after] = [one.before.asSetH ?? Infinity, one.after.asSetH ?? Infinity];
            if (before < Infinity) {
              expect(after).toBeGreaterThanOrEqual(before - Math.max(1 / 30, 0.01 * before));
            }
            expect(worse).not.toContain(one.act);
            expect(boughtText(one, { followedH })).not.toMatch(/NaN|undefined|Infinity/);
            if (one.gain === 'kept') kept++;
          }
          const counts = protections.map(({ passes }) => passes[1]);
          expect(counts).toEqual([...counts].sort((a, b) => a - b));
        }),
        runsOf(120),
      );
      expect(kept).toBeGreaterThan(1);
    },
    patience * 2,
  );
});
