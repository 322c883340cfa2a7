import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { momentH } from '../../shared/scenario/clock';
import { lineOf } from '../../shared/verdict/lineResult';
import { say } from '../../shared/words/plans';
import { movesSentence } from '../../src/say/turn/turned';
import { turnSentences } from '../../src/say/turn/turn';
import type { LogAnswer } from '../../workers/studies/answerLog';
import { dayMeans } from '../../workers/studies/dayMeans';
import { widestDay, type Replay } from '../../workers/studies/turn/replay';
import { turn, type TurnQuestion } from '../../workers/studies/turn/turn';
import type { Turned } from '../../workers/studies/turn/turned';
import { patience, runsOf } from '../laws/size';
import { anyTurn, type AnyTurn } from './anyTurn';
import { atLevel, byHandInTruth, farthestDkh, leftAlone, replayIn, turnInTruth } from './inTruth';

const questionOf = ({ known, targetDkh, giveOrTakeDkhPerDay }: AnyTurn): TurnQuestion => ({
  ...{ now: known, plan: known, targetDkh, giveOrTakeDkhPerDay },
  kit: { scoopG: 5, pumpMlPerMin: 20 },
});

/** A log that knows the level well, today. */
const well = {
  fit: {
    now: { covariance: [[1e-4]] },
    points: [],
    leaps: [],
    startAt: '2026-03-01T10:00',
    endH: 0,
  },
  useNow: { dkhPerDay: 1 },
  nextTest: { inDays: 7 },
  habits: { doses: [], change: undefined },
} as unknown as LogAnswer;

/** As near as a test can tell, dKH. */
const NEAR_DKH = 0.3;
/** A level that was read 0.05 off, and hours at which nothing was run. */
const READ_DKH = 0.2;

/** What a day moves by itself in the true water, once it stands at the target as the turn holds it there. */
function swingAtTarget({ truth, targetDkh }: AnyTurn, { heldPlan }: Turned): number {
  const { dkh } = replayIn(atLevel(truth, targetDkh), [{ scenario: heldPlan, untilDay: 11 }]);
  return widestDay(dkh, 3 * 24, dkh.length);
}

/** May be moved in a day: the limit, as fast as it moves anyway, or the day's own swing once at rest. */
const allowedDkh = (any: AnyTurn, turned: Turned, run: Replay, alone: Replay): number =>
  Math.max(
    any.truth.limits.alkalinityChangeDkhPerDay,
    widestDay(alone.dkh, 0, 48),
    1.15 * widestDay(run.dkh, (turned.settled!.days + 2) * 24, run.dkh.length),
    1.15 * swingAtTarget(any, turned),
  ) + 0.05;

/** The most that a day moves it; where a day that does so ends what is promised, until then. */
const movesDkh = ({ endedBy, promisedDays }: Turned, run: Replay): number =>
  endedBy?.breach.quantity === 'alkalinityChange'
    ? widestDay(run.dkh, 0, promisedDays * 24)
    : run.largestMoveDkh;

/** What a turn does to a tank's true water that it promised not to do. */
function breachesOf(any: AnyTurn, turned: Turned, run: Replay, alone: Replay) {
  const { truth, known, giveOrTakeDkhPerDay } = any;
  const off = Math.abs(known.corals.useDkhPerDay - truth.corals.useDkhPerDay);
  // Once in twenty the use is farther off than its doubt says: nothing was promised of that.
  if (off > giveOrTakeDkhPerDay) return [];
  const { limits } = truth;
  const untilH = turned.promisedDays * 24;
  const means = dayMeans(run.dkh).slice(turned.settled!.days + 1, turned.promisedDays);
  return [
    ...(movesDkh(turned, run) > allowedDkh(any, turned, run, alone)
      ? [`moves ${movesDkh(turned, run)}`]
      : []),
    ...means
      .filter(
        (mean) =>
          mean < limits.alkalinityLowDkh - READ_DKH || mean > limits.alkalinityHighDkh + READ_DKH,
      )
      .map((mean) => `a day at ${mean}`),
    ...run.lines
      .filter(
        ({ id, quantity, firstH, trouble, worst, limit }) =>
          !quantity.startsWith('alkalinity') &&
          firstH !== undefined &&
          firstH < untilH &&
          lineOf(alone.lines, id).firstH === undefined &&
          (trouble === 'above' ? worst - limit : limit - worst) > 0.02 * limit,
      )
      .map(({ id, worst, limit }) => `${id} ${worst} (${limit})`),
  ];
}

it(
  'a turn keeps what it promised in the tank’s true water, and comes nearer to the target than hand arithmetic',
  () => {
    const kept: { own: number; byHand: number }[] = [];
    const breaches: string[] = [];
    const took: number[] = [];
    let [turns, settled, refused, largest] = [0, 0, 0, 0];
    fc.assert(
      fc.property(anyTurn, (any) => {
        const begun = performance.now();
        const question = questionOf(any);
        const found = turn(question);
        took.push(performance.now() - begun);
        const { headline, more } = turnSentences(
          { question, turn: found, untilKnown: undefined },
          {
            readings: [{ at: '2026-03-01T10:00', alkalinityDkh: 8 }],
            answer: well,
            now: '2026-03-01T20:00',
          },
        );
        for (const told of [headline, ...more]) {
          expect(told).not.toMatch(/NaN|undefined|Infinity|-\d/);
        }
        if (found.kind !== 'turn') {
          refused++;
          expect(more.length).toBeGreaterThan(0);
          return;
        }
        const { turned } = found;
        turns++;
        for (const value of [turned.to, turned.low, turned.high, turned.from]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThan(Infinity);
        }
        // What is due as the tank is taken over is none of the mornings that are run.
        for (const one of turned.scenario.additions) {
          expect(momentH(one, any.truth.start.clockHour)).toBeGreaterThan(0);
        }
        // The log's own next test is a week off at most.
        const isWeek = turned.promisedDays >= 7;
        expect(isWeek || more.includes(say.offer.testBy(turned.promisedDays))).toBe(true);
        expect(turned.low).toBeLessThanOrEqual(turned.to);
        expect(turned.high).toBeGreaterThanOrEqual(turned.to);
        expect(movesSentence(turned)).not.toMatch(/NaN|undefined|Infinity/);
        const run = turnInTruth(any.truth, turned);
        const alone = leftAlone(any.truth);
        breaches.push(...breachesOf(any, turned, run, alone));
        largest += Number(movesDkh(turned, run) > allowedDkh(any, turned, run, alone));
        const { days, lowDkh, highDkh } = turned.settled!;
        const there = dayMeans(run.dkh)[days]!;
        settled += Number(there > lowDkh - READ_DKH && there < highDkh + READ_DKH);
        kept.push({
          own: farthestDkh(run, any.targetDkh),
          byHand: farthestDkh(byHandInTruth(any), any.targetDkh),
        });
      }),
      runsOf(500, 0.1),
    );
    const within = (which: 'own' | 'byHand') => kept.filter((one) => one[which] <= NEAR_DKH).length;
    const medians = [median(kept, ({ own }) => own)!, median(kept, ({ byHand }) => byHand)!];
    const ms = took.toSorted((a, b) => a - b);
    const quantile = (p: number) =>
      Math.round(ms[Math.min(ms.length - 1, Math.floor(p * ms.length))]!);
    console.log(
      [
        `turns ${turns} of ${turns + refused}; stood where promised ${settled}; moved faster than allowed ${largest}`,
        `farthest, days 7–28, median ${medians[0]!.toFixed(2)} (by hand ${medians[1]!.toFixed(2)})`,
        `within ${NEAR_DKH} dKH ${within('own')} (by hand ${within('byHand')})`,
        `ms p50 ${quantile(0.5)}, p99 ${quantile(0.99)}, most ${quantile(1)}`,
      ].join('; '),
    );
    expect(breaches).toEqual([]);
    expect(turns).toBeGreaterThan(0);
    expect(settled / turns).toBeGreaterThan(0.9);
    expect(medians[0]).toBeLessThanOrEqual(medians[1]!);
    expect(within('own')).toBeGreaterThanOrEqual(within('byHand'));
  },
  patience * 6,
);
