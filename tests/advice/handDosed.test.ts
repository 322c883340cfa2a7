import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import { emptyLog } from '../../shared/log/tankLog';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { crossProblems } from '../../shared/scenario/crossChecks';
import { keepable } from '../../shared/scenario/keepable';
import { toDecimals } from '../../shared/units/digits';
import { tankAnswer } from '../../src/cli/tankAnswer';
import { firstSentence, turnTold } from '../../src/cli/tankSentences';
import { openingPlans } from '../../src/store/plans';
import { newTank } from '../../src/store/tanks';
import { toldRun } from '../../workers/desk/logQuestions';
import { type Dose } from '../../workers/studies/forecast/habit';
import { handDosed } from '../../workers/studies/forecast/goingOn';
import { isFull, patience, runsOf } from '../laws/size';
import { START_H } from '../log/testedDaily';
import { anyHandDosed, handDosedTank } from './anyHandDosed';
import { atLevel, farthestDkh, replayIn } from './inTruth';

const DAYS = 28;
/** No test tells less, dKH. */
const UNTOLD_DKH = 0.15;

interface Came {
  readonly own: number;
  readonly asItWas: number;
  readonly byHand: number;
}

/** From one day to the next at the same hour, dKH. */
const risesBy = (dkh: readonly number[]) =>
  Math.max(...dkh.slice(24).map((value, hour) => value - dkh[hour]!));

it(
  'who pours in by hand is told by how much to turn that, and comes nearer than by arithmetic or by going on',
  async () => {
    const count = { turned: 0, milder: 0, oftener: 0, refused: 0, raised: 0, noHabit: 0, lost: 0 };
    const came: Came[] = [];
    await fc.assert(
      fc.asyncProperty(anyHandDosed, async (drawn) => {
        const { plan, truth, log, values, gramsEach, endsDkh } = handDosedTank(drawn);
        const { volumeL, everyDays, additive, limitDkhPerDay, tests } = drawn;
        fc.pre(Math.min(...values) > 4.5 && Math.max(...values) < 14);
        const targetDkh = toDecimals(drawn.targetDkh, 1);
        const told = await tankAnswer(
          {
            ...newTank('tank-1', 'A basin at Fennick Quay', openingPlans(plan)),
            log: { ...emptyLog, readings: [...log], targetDkh },
          },
          localTimeOf(START_H + (tests - 1) * 24 + 1),
        );
        const { turn, question } = told.turn;
        const doses = question.byHand?.doses ?? [];
        if (doses.length === 0) {
          count.noHabit++;
          return;
        }
        const says = turnTold(told);
        expect(says.join(' ')).not.toMatch(/NaN|undefined|Infinity|nothing to turn/);
        // A plan is reckoned without the hand, and says so.
        if (!/Test|test first/.test(says[0]!)) {
          expect(firstSentence(told)).toContain('stands in for what your log shows');
        }
        const { untilKnown } = told.turn;
        const tried = turn.kind === 'turn' ? turn.turned : untilKnown;
        // What is tried on the bench can be run there.
        if (tried && 'scenario' in tried)
          expect(crossProblems(keepable(tried.scenario))).toEqual([]);
        const now = { ...atLevel(truth, endsDkh), additions: [] };
        const { fromH } = question.byHand!;
        const poured = (each: number, more: typeof truth.additions = []) => {
          const all = doses.map((dose): Dose => {
            return dose.additive === additive ? { ...dose, gramsEach: each } : dose;
          });
          const { additions } = handDosed({ ...now, days: DAYS }, { doses: all, fromH });
          const scenario = { ...now, additions: [...additions, ...more] };
          return replayIn(now, [{ scenario, untilDay: DAYS }]);
        };
        const stretches = toldRun(told.turn);
        if (turn.kind !== 'turn') {
          count.refused++;
          // Nobody is left with low water that does not come up by what is poured in anyway.
          const isLow = values.at(-1)! < targetDkh - 0.5;
          if (!isLow) return;
          const asItWas = poured(gramsEach);
          if (stretches.length === 0) {
            expect(asItWas.dkh[72]!).toBeGreaterThan(asItWas.dkh[0]!);
            return;
          }
          // And nobody's water moves faster by what they are told than by what they pour.
          count.raised++;
          const own = replayIn(now, stretches);
          const mayRise = Math.max(limitDkhPerDay, risesBy(asItWas.dkh));
          expect(risesBy(own.dkh)).toBeLessThan(mayRise + UNTOLD_DKH);
          const day = Math.min(72, own.dkh.length - 1);
          const least = Math.min(asItWas.dkh[day]!, own.dkh[0]!);
          expect(own.dkh[day]!).toBeGreaterThan(least - UNTOLD_DKH);
          return;
        }
        const { turned } = turn;
        const isOftener = turned.insteadOf && turned.dose!.everyDays < everyDays;
        count[isOftener ? 'oftener' : turned.insteadOf ? 'milder' : 'turned']++;
        expect(turned.lever).toBe('hand');
        expect(turned.plan).toEqual(told.plan);
        const own = replayIn(now, stretches);
        const asItWas = poured(gramsEach);
        // What was poured and what the readings fell by, and the gap in even parts.
        const fell = ((values[0]! - values.at(-1)!) / (tests - 1)) * everyDays;
        const gap = targetDkh - values.at(-1)!;
        const parts = Math.max(1, Math.ceil(Math.abs(gap) / limitDkhPerDay));
        const morning = gramsForDkh('sodiumBicarbonate', gap / parts, volumeL);
        const more = Array.from({ length: gap > 0.1 ? parts : 0 }, (_, i) => ({
          ...{ day: 2 + i, hour: 9, additive: 'sodiumBicarbonate' as const, grams: morning },
        }));
        const each = Math.max(0, gramsEach + gramsForDkh(additive, fell, volumeL));
        const byHand = poured(each, more);
        const mayMove = Math.max(limitDkhPerDay, turned.largestDailyDkh, asItWas.largestMoveDkh);
        expect(own.largestMoveDkh).toBeLessThan(mayMove + UNTOLD_DKH);
        const far = { own: farthestDkh(own, targetDkh), byHand: farthestDkh(byHand, targetDkh) };
        // Arithmetic that moves the water faster than it may is none to lose to.
        const isSlow = byHand.largestMoveDkh < Math.max(limitDkhPerDay, own.largestMoveDkh) + 0.1;
        if (isSlow && far.own > far.byHand + 0.5) count.lost++;
        came.push({ ...far, asItWas: farthestDkh(asItWas, targetDkh) });
      }),
      runsOf(150, 0.5),
    );
    const middle = (one: keyof Came) => median(came, (tank) => tank[one])!;
    console.log(
      `turned ${count.turned} (${count.lost} lost to arithmetic), by a milder powder ${count.milder}, in smaller parts ${count.oftener}, refused ${count.refused} (${count.raised} of them low, and told what to pour), no habit ${count.noHabit}; farthest off in days 7–28, median: ${middle('own').toFixed(2)} dKH, by hand ${middle('byHand').toFixed(2)}, as it was ${middle('asItWas').toFixed(2)}`,
    );
    expect(came.length).toBeGreaterThanOrEqual(count.refused);
    // Readings to 0.1 dKH may flatter arithmetic; hardly ever.
    expect(count.lost).toBeLessThanOrEqual(Math.ceil(0.02 * came.length));
    // The middle of a few is not that of many.
    const part = isFull ? 0.4 : 1;
    expect(middle('own')).toBeLessThan(part * middle('byHand'));
    expect(middle('own')).toBeLessThan(part * middle('asItWas'));
  },
  patience * 5,
);
