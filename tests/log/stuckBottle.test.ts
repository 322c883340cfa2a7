import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bottleDumps } from '../../shared/recipe/bottleDump';
import { twoPart } from '../../shared/recipe/twoPart';
import { newFault } from '../../shared/scenario/newFault';
import { scenarioOf } from '../../shared/scenario/write';
import { lineOf } from '../../shared/verdict/lineResult';
import { correctionSentence } from '../../src/say/plan/correction';
import { run } from '../../workers/engine/run';
import { planQuestion } from '../../workers/studies/plan/planQuestion';
import { correctBefore } from '../../workers/studies/plan/correctBefore';
import { threePlans } from '../../workers/studies/plan/threePlans';
import { runsOf } from '../laws/size';

const tankOf = (volumeL: number, useDkhPerDay: number) =>
  scenarioOf({
    type: 'paper-reef/scenario',
    version: 4,
    title: 'a tank in the rope walk at Tarn Quay',
    days: 2,
    tank: { volumeL, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay, growthPercentPerDay: 0 },
  });

it('a bottle filled as told stays below the limit when its pump sticks, by the engine; a full one ends where arithmetic has it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 40, max: 2000 }),
      fc.integer({ min: 2, max: 40 }),
      (litres, use) => {
        const tank = tankOf(litres, use / 10);
        const ml = (use / 10) * litres * 0.19;
        const stuck = {
          ...tank,
          dosers: twoPart('sodiumCarbonate', ml, tank),
          faults: [newFault('doserOn', { day: 1, hour: 1, endsAfterH: 47, pump: 1 })],
        };
        const [bottle] = bottleDumps(stuck);
        if (!bottle) return;
        const peakWith = (stockL: number) => {
          const [carbonate, calcium] = stuck.dosers;
          const filled = { ...stuck, dosers: [{ ...carbonate!, stockL }, calcium!] };
          return lineOf(run(filled).lines, 'alkalinityHigh').worst;
        };
        expect(peakWith(bottle.fillL)).toBeLessThanOrEqual(stuck.limits.alkalinityHighDkh + 0.02);
        expect(peakWith(bottle.fillL * 1.5)).toBeGreaterThan(stuck.limits.alkalinityHighDkh);
      },
    ),
    runsOf(60),
  );
  // By hand: 2 L of 100 g/L soda ash, 105.99 g/mol, in 120 L at 0.3566 meq/L a dKH: 88 dKH.
  const small = tankOf(120, 1);
  const [bottle] = bottleDumps({ ...small, dosers: twoPart('sodiumCarbonate', 30, small) });
  expect(bottle!.endDkh - 8.5).toBeCloseTo((2 * 100 * 2 * 1000) / 105.99 / 0.3566 / 120, 0);
});

it('a use that nobody measured belongs to the water of the bench: one low reading asks for no stronger mix', () => {
  const plan = tankOf(120, 1);
  const readings = [{ at: '2026-11-26T13:00', alkalinityDkh: 6.2 }];
  const gramsOf = (log: typeof readings) => {
    const question = planQuestion(plan, log, undefined, { targetDkh: 8.5 });
    const { dosers } = threePlans(question)[1]!.scenario;
    return dosers[0]!.mlPerDay * dosers[0]!.recipe[0]!.gramsPerL;
  };
  expect(gramsOf(readings) / gramsOf([])).toBeCloseTo(1, 1);
});

it('a raise is told with the dosing that it was reckoned with: poured alone it would sink', () => {
  const plan = tankOf(120, 1);
  const question = planQuestion(plan, [{ at: '2026-11-26T13:00', alkalinityDkh: 6.2 }], undefined, {
    targetDkh: 8.5,
  });
  const [, pumps] = threePlans(question);
  const found = correctBefore(question, pumps!.scenario);
  if (found.kind !== 'raise') throw new Error(found.kind);
  expect(correctionSentence(found, 6.2, 8.5, 0.22)).toMatch(
    /^Start the plan’s dosing today\. Besides it/,
  );
  const endOf = (dosers: typeof plan.dosers) =>
    lineOf(run({ ...found.scenario, dosers }).lines, 'alkalinityHigh').worst;
  expect(endOf(found.scenario.dosers)).toBeGreaterThan(8.3);
  expect(endOf([])).toBeLessThan(8);
});
