import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import { changedBy } from '../../shared/verdict/wantedChange';
import { lineOf, passed } from '../../shared/verdict/lineResult';
import { tellVerdict } from '../../src/say/verdict/verdict';
import { tankLike } from '../../src/bench/tankLike';
import { run } from '../../workers/engine/run';
import { answerLog } from '../../workers/studies/answerLog';
import { changeTexts } from '../../src/say/verdict/changeTexts';
import { firstChange } from '../../workers/studies/firstChange';
import { dumpHolds } from '../../workers/studies/plan/fullDump';
import { correctBefore } from '../../workers/studies/plan/correctBefore';
import { planQuestion } from '../../workers/studies/plan/planQuestion';
import { turn } from '../../workers/studies/turn/turn';
import { patience, runsOf } from '../laws/size';
import { anyScenario } from '../laws/anyScenario';
import { anyTank } from './anyPlan';

/** A tank on limewater of any strength, some with a pump beside it. */
const onLimewater = fc
  .record({
    tank: anyTank,
    gramsPerL: fc.double({ min: 0, max: 1.6, noNaN: true }),
    refillEveryDays: fc.integer({ min: 1, max: 6 }),
    sodaMlPerL: fc.constantFrom(0, 0, 0.2, 0.6),
  })
  .map(({ tank, gramsPerL, refillEveryDays, sodaMlPerL }): Scenario => ({
    ...tank,
    days: 8,
    topOff: { ...tank.topOff, additive: 'calciumHydroxide', gramsPerL, refillEveryDays },
    dosers: tankLike({ volumeL: tank.tank.volumeL, dweller: 'mixed', carrier: 'pump' })
      .dosers.slice(0, 1)
      .map((pump) => ({ ...pump, mlPerDay: sodaMlPerL * tank.tank.volumeL })),
  }));

/** Lines that are newly passed, or passed sooner or farther, told apart from the law's own reckoning. */
function worsened(before: Scenario, after: Scenario): string[] {
  const [was, is] = [run(before), run(after)];
  return passed(is.lines).flatMap(({ id, firstH, worst, limit }) => {
    const old = lineOf(was.lines, id);
    const sooner = old.firstH === undefined || firstH! < old.firstH - 1e-6;
    const farther = Math.abs(worst - limit) > Math.abs(old.worst - limit) + 1e-6;
    return sooner || farther ? [`${id}: ${old.worst} → ${worst}`] : [];
  });
}

const lagoon = tankLike({ volumeL: 300, dweller: 'mixed', carrier: 'limewater' });
const plan: Scenario = {
  ...lagoon,
  corals: { ...lagoon.corals, useDkhPerDay: 1.1 },
  evaporation: { ...lagoon.evaporation, litresPerDay: 4 },
};
const logged = (...dkh: number[]) =>
  dkh.map((alkalinityDkh, i) => ({ at: `2026-03-0${i + 1}T10:30`, alkalinityDkh }));
const asked = (dkh: readonly number[]) => {
  const readings = logged(...dkh);
  return planQuestion(plan, readings, answerLog(plan, readings, 0.1), { targetDkh: 8.5 });
};

describe('the first change that a verdict asks for', () => {
  it(
    'is offered only where the run with it keeps every line at least as well, on any plan',
    () => {
      let offered = 0;
      const isNoWorse = (scenario: Scenario) => {
        const { change } = firstChange(scenario);
        if (Object.keys(change).length === 0) return;
        offered += 1;
        const changed = changedBy(scenario, change);
        expect(worsened(scenario, changed)).toEqual([]);
        // No stronger mix stands there in such a reservoir that all of it at once does harm.
        if (changed.topOff.gramsPerL > scenario.topOff.gramsPerL) {
          expect(dumpHolds(changed)).toBe(true);
        }
      };
      fc.assert(fc.property(onLimewater, isNoWorse), runsOf(800));
      expect(offered).toBeGreaterThan(3);
      fc.assert(fc.property(anyScenario, isNoWorse), runsOf(200));
    },
    patience * 2,
  );

  it(
    'is none for a tank that is being raised: neither from 6.2 nor from six falling tests',
    () => {
      const low = asked([6.2]);
      const way = correctBefore(low, low.now);
      const six = asked([8.4, 8.1, 8.2, 7.8, 7.7, 7.5]);
      const turned = turn({ ...six, plan });
      if (way.kind !== 'raise' || turned.kind !== 'turn') throw new Error('no way is offered');
      for (const raised of [way.scenario, turned.turned.scenario, turned.turned.held]) {
        expect(firstChange(raised).change).toEqual({});
        expect(tellVerdict(raised, run(raised)).details.join(' ')).not.toMatch(/More is dosed/);
      }
    },
    patience,
  );

  it('is a weaker mix where alkalinity climbs out of the band, and its run keeps it', () => {
    const strong = { ...plan, corals: { ...plan.corals, useDkhPerDay: 0.6 } };
    expect(tellVerdict(strong, run(strong)).details.join(' ')).toContain('More is dosed');
    const { change } = firstChange(strong);
    expect(change.mixGPerL).toBeLessThan(1.1);
    expect(passed(run(changedBy(strong, change)).lines)).toEqual([]);
  });

  it('brings a stronger mix in no larger a reservoir than may go in at once', () => {
    const weak = { ...plan, topOff: { ...plan.topOff, gramsPerL: 0.9, reservoirL: 20 } };
    const { change } = firstChange(weak);
    expect(change.mixGPerL).toBeGreaterThan(1);
    expect(change.reservoirL).toBeLessThan(15);
    expect(change.refillEveryDays).toBe(Math.floor(change.reservoirL! / 4));
    expect(dumpHolds(changedBy(weak, change))).toBe(true);
    expect(dumpHolds(changedBy(weak, { mixGPerL: change.mixGPerL! }))).toBe(false);
    expect(changeTexts(change).join()).toMatch(
      /^Set the mix to 1\.\d+ g\/L, no more than [\d.]+ L/,
    );
  });
});
