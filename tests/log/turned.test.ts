import { expect, it } from 'vitest';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { usePerDay } from '../../shared/verdict/measures';
import { run, stateAfter } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { answerLog, type LogAnswer } from '../../workers/studies/answerLog';

const soda = { additive: 'sodiumCarbonate', gramsPerL: 60 } as const;
const chloride = { additive: 'calciumChlorideDihydrate', gramsPerL: 83 } as const;
const dosed = (mlPerDay: number): Scenario =>
  scenarioOf({
    days: 12,
    start: { clockHour: 10 },
    tank: { volumeL: 300, alkalinityDkh: 8.4 },
    corals: { useDkhPerDay: 1 },
    dosers: [
      { name: 'soda', recipe: [soda], mlPerDay },
      { name: 'calcium', recipe: [chloride], mlPerDay },
    ],
  });
const [before, after] = [dosed(70), dosed(110)];

/** Twelve days, turned up on the seventh morning, a test every morning; nothing is read wrongly. */
const readings: Reading[] = (() => {
  const turned = stateAfter({ ...before, days: 6 });
  const first = readColumn(run({ ...before, days: 6 }).trace, 'alkalinity_dkh');
  const second = readColumn(run(after, usualOptions, turned).trace, 'alkalinity_dkh');
  const hourly = [...first, ...second.subarray(1)];
  return Array.from({ length: 13 }, (_, day) => ({
    at: `2026-03-${String(day + 1).padStart(2, '0')}T10:00`,
    alkalinityDkh: Number(hourly[day * 24]!.toFixed(2)),
  }));
})();

const ran = [{ until: '2026-03-07T10:00', plan: before }];

/** What a log says of the use, knowing of the turn and not. */
function saidOf(log: readonly Reading[]) {
  const knowing = answerLog(after, log, 0.1, usualOptions, ran);
  const blind = answerLog(after, log, 0.1);
  if ('why' in knowing || 'why' in blind) throw new Error('there is a fit');
  return { knowing, blind };
}

it('a log over a turn is read with what was dosed before it, and after it with what is dosed now', () => {
  const { knowing, blind } = saidOf(readings);
  const { trace } = run(after, usualOptions, stateAfter({ ...before, days: 6 }));
  const truth = usePerDay(trace, 96, 144);
  expect(Math.abs(knowing.useNow.dkhPerDay - truth)).toBeLessThan(0.03);
  expect(knowing.fit.points.every(({ standardised }) => Math.abs(standardised) < 1)).toBe(true);
  const by = (answer: LogAnswer) => answer.useNow.standardErrorDkhPerDay;
  expect(by(knowing)).toBeLessThan(by(blind) / 3);
});

it('on the day after a turn, nobody is told to turn once more by what was dosed before', () => {
  const { knowing, blind } = saidOf(readings.slice(0, 8));
  const truth = usePerDay(run({ ...before, days: 6 }).trace, 96, 144);
  expect(Math.abs(knowing.useNow.dkhPerDay - truth)).toBeLessThan(0.06);
  expect(Math.abs(blind.useNow.dkhPerDay - truth)).toBeGreaterThan(0.2);
});

it('a turn after the last reading changes nothing of what was read, however often it is made', () => {
  const log = readings.slice(0, 6);
  const said = answerLog(before, log, 0.1);
  if ('why' in said) throw new Error(said.why);
  const level = said.fit.now.dkh;
  let ranBy = [{ until: '2026-03-06T12:00', plan: before }];
  for (const [until, plan] of [
    ['2026-03-06T12:30', after],
    ['2026-03-08T09:00', dosed(160)],
  ] as const) {
    const turned = answerLog(plan, log, 0.1, usualOptions, ranBy);
    if ('why' in turned) throw new Error(turned.why);
    expect(turned.useNow.dkhPerDay).toBeCloseTo(said.useNow.dkhPerDay, 2);
    expect(turned.fit.now.dkh).toBeCloseTo(level, 2);
    // What comes is dosed anew: it rises where it fell.
    expect(turned.now.dosers[0]!.mlPerDay).toBe(plan.dosers[0]!.mlPerDay);
    expect(turned.fan.dkh.at(-1)!).toBeGreaterThan(said.fan.dkh.at(-1)! + 0.5);
    ranBy = [...ranBy, { until, plan }];
  }
});

it('between the last reading and a later turn the forecast doses as the tank did', () => {
  const log = readings.slice(0, 6);
  const turnedAt = [{ until: '2026-03-09T10:00', plan: before }];
  const answer = answerLog(after, log, 0.1, usualOptions, turnedAt);
  if ('why' in answer) throw new Error(answer.why);
  const untilTurn = { ...before, days: 8 };
  const then = run({ ...after, days: 19 }, usualOptions, stateAfter(untilTurn));
  const truth = [
    ...readColumn(run(untilTurn).trace, 'alkalinity_dkh'),
    ...readColumn(then.trace, 'alkalinity_dkh').subarray(1),
  ];
  const { timesH, dkh, spreadDkh } = answer.fan.ahead;
  const off = timesH
    .slice(0, 14 * 24)
    .map((timeH, k) => Math.abs(dkh[k]! - truth[5 * 24 + timeH]!) / spreadDkh[k]!);
  // In standard errors of the water.
  expect(Math.max(...off)).toBeLessThan(2);
  // Dosed anew from the last reading on, it would stand higher on the day of the turn.
  const sooner = [{ until: '2026-03-06T10:30', plan: before }];
  const atOnce = answerLog(after, log, 0.1, usualOptions, sooner);
  if ('why' in atOnce) throw new Error(atOnce.why);
  expect(atOnce.fan.ahead.dkh[3 * 24]! - truth[8 * 24]!).toBeGreaterThan(3 * spreadDkh[3 * 24]!);
});
