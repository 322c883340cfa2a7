import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { localTimeOf } from '../../shared/log/localTime';
import { toDecimals } from '../../shared/units/digits';
import { tankAnswer } from '../../src/cli/tankAnswer';
import { firstSentence, turnTold } from '../../src/cli/tankSentences';
import { openingPlans } from '../../src/store/plans';
import { newTank } from '../../src/store/tanks';
import { toldRun } from '../../workers/desk/logQuestions';
import { dayMeans } from '../../workers/studies/dayMeans';
import { widestDay, type Replay } from '../../workers/studies/turn/replay';
import { patience, runsOf } from '../laws/size';
import { dosedTank, evenly, START_H, testedDaily } from '../log/testedDaily';
import { atLevel, leftAlone, replayIn } from './inTruth';

/** Corals dosed for in part, not at all or too much, until a log ends well below where it is wanted. */
const anyLow = fc.record({
  volumeL: evenly(40, 2000),
  useDkhPerDay: evenly(0.2, 2.5),
  dosedShare: fc.oneof(fc.constant(0), ...Array.from({ length: 4 }, () => evenly(0.1, 1.2))),
  startDkh: evenly(5.5, 7.5),
  tests: fc.integer({ min: 2, max: 10 }),
  targetDkh: evenly(7.6, 9.5),
  limitDkhPerDay: evenly(0.5, 1.4),
});

/** No test tells less, dKH. */
const UNTOLD_DKH = 0.15;
/** What is poured on the first morning is in the mean of the third day. */
const DAYS = 3;

/** From one day to the next at the same hour, dKH. */
const risesBy = ({ dkh }: Replay): number =>
  Math.max(...dkh.slice(24, 24 * DAYS + 1).map((value, hour) => value - dkh[hour]!));

/** Whether it rises faster than it may with nothing poured in: more would only add to that. */
const risesTooFast = ({ dkh }: Replay, limitDkhPerDay: number): boolean =>
  dkh[48]! > dkh[0]! && widestDay(dkh, 0, 48) > 0.9 * limitDkhPerDay;

it(
  'a tank that stands too low is told what brings it up, faster than if nothing were done and no faster than it may',
  async () => {
    const count = { told: 0, risesAnyway: 0, nothing: 0 };
    const raisedBy: number[] = [];
    await fc.assert(
      fc.asyncProperty(anyLow, async ({ tests, targetDkh, limitDkhPerDay, ...drawn }) => {
        const { plan, truth } = dosedTank(drawn, tests);
        const { dkh, log, values } = testedDaily(truth, tests);
        const newest = values.at(-1)!;
        fc.pre(newest > 4.5 && newest < targetDkh - 0.5);
        const limits = { ...plan.limits, alkalinityChangeDkhPerDay: limitDkhPerDay };
        const told = await tankAnswer(
          {
            ...newTank('tank-1', 'A basin at Sedge Holm', openingPlans({ ...plan, limits })),
            log: { ...emptyLog, readings: log, targetDkh: toDecimals(targetDkh, 1) },
          },
          localTimeOf(START_H + (tests - 1) * 24 + 1),
        );
        const sentences = [firstSentence(told), ...turnTold(told)];
        for (const one of sentences) expect(one).not.toMatch(/NaN|undefined|Infinity/);
        // Where calcium stands in the way nobody has read it.
        const text = turnTold(told).join(' ');
        if (/calcium (passes|reaches)/i.test(text))
          expect(text).toMatch(/Nobody has read .*calcium/);
        const { turn } = told.turn;
        const settled = turn.kind === 'turn' ? turn.turned.settled : undefined;
        const isThere =
          turn.kind === 'turn' &&
          settled!.days < turn.turned.promisedDays &&
          settled!.lowDkh >= limits.alkalinityLowDkh &&
          settled!.highDkh <= limits.alkalinityHighDkh;
        if (!isThere) expect(sentences.join(' ')).not.toContain('from then on');
        const now = { ...atLevel(truth, dkh[(tests - 1) * 24]!), limits };
        const alone = leftAlone(now);
        const stretches = toldRun(told.turn);
        if (stretches.length === 0) {
          count[risesTooFast(alone, limitDkhPerDay) ? 'risesAnyway' : 'nothing']++;
          return;
        }
        count.told++;
        const { untilDay } = stretches.at(-1)!;
        const after = { scenario: now, untilDay: Math.max(DAYS, untilDay) };
        const run = replayIn(now, untilDay < DAYS ? [...stretches, after] : stretches);
        const [means, before] = [dayMeans(run.dkh), dayMeans(alone.dkh)];
        // What comes up by itself may be turned down on the way.
        if (before.every((dkh) => dkh < targetDkh - UNTOLD_DKH)) {
          raisedBy.push(means[DAYS - 1]! - before[DAYS - 1]!);
          for (let day = 0; day < DAYS; day++) {
            expect(means[day]!).toBeGreaterThan(before[day]! - UNTOLD_DKH);
          }
        }
        const mayRise = Math.max(limitDkhPerDay, risesBy(alone));
        expect(risesBy(run)).toBeLessThan(mayRise + UNTOLD_DKH);
      }),
      runsOf(120, 0.1),
    );
    const least = Math.min(...raisedBy);
    console.log(
      `told ${count.told}, rises by itself ${count.risesAnyway}, nothing ${count.nothing}; against nothing on day ${DAYS} by ${least.toFixed(2)} to ${Math.max(...raisedBy).toFixed(2)} dKH, median ${median(raisedBy)!.toFixed(2)}`,
    );
    expect(count.told).toBeGreaterThan(count.risesAnyway);
    expect(least).toBeGreaterThan(0);
    expect(count.nothing).toBe(0);
  },
  patience * 5,
);
