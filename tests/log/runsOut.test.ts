import { expect, it } from 'vitest';
import { countedReadings } from '../../shared/log/counted';
import type { Reading } from '../../shared/log/reading';
import { emptyLog, type TankLog } from '../../shared/log/tankLog';
import { scenarioOf } from '../../shared/scenario/write';
import { isCounted, runsOutText, soonestOut } from '../../src/say/stock/runsOut';
import { usedUp } from '../../workers/studies/stock/paces';

const soda = { additive: 'sodiumCarbonate', gramsPerL: 100 } as const;
const chloride = { additive: 'calciumChlorideDihydrate', gramsPerL: 139 } as const;
const plan = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1, growthPercentPerDay: 0 },
  evaporation: { litresPerDay: 4 },
  topOff: { reservoirL: 20 },
  dosers: [
    { name: 'soda', recipe: [soda], mlPerDay: 60, stockL: 3 },
    { name: 'calcium', recipe: [chloride], mlPerDay: 60, stockL: 1.2 },
  ],
});
const used = usedUp({ now: plan, giveOrTakeDkhPerDay: 0.1 });

it('what is poured in by hand is used up too', () => {
  const bare = scenarioOf({ tank: { volumeL: 240 }, waterChanges: { percent: 0 } });
  const dose = { additive: 'sodiumCarbonate', gramsEach: 2.6, everyDays: 0.5, lastH: 0 } as const;
  const question = { now: bare, giveOrTakeDkhPerDay: 0 };
  expect(usedUp(question).supplies).toEqual([]);
  const { supplies } = usedUp({ ...question, byHand: { doses: [dose], fromH: 1 } });
  expect(supplies).toEqual([
    { id: 'sodiumCarbonate', perDay: 5.2, mostPerDay: 5.2, leastPerDay: 5.2 },
  ]);
});
const NOW = '2026-05-10T09:00';

const logOf = (readings: readonly Reading[], more: Partial<TankLog> = {}): TankLog => ({
  ...{ ...emptyLog, ...more },
  readings: [...readings],
});
const soonest = (log: TankLog, now = NOW) => soonestOut(log, used, countedReadings(log, now), now);

it('says nothing of what nobody has counted or filled', () => {
  const log = logOf([{ at: '2026-05-01T09:00', alkalinityDkh: 8.4, notes: 'reservoir filled' }]);
  expect(isCounted(log)).toBe(false);
  expect(soonest(log)).toBeUndefined();
});

it('a reservoir goes as fast as may evaporate, a bottle as fast as its pump may give', () => {
  const log = logOf([
    { at: '2026-05-08T09:00', event: 'reservoirFilled' },
    { at: '2026-05-09T09:00', event: 'bottleFilled' },
  ]);
  expect(isCounted(log)).toBe(true);
  const first = soonest(log)!;
  expect(first.what).toBe('the reservoir');
  // By hand: 20 L at 4 L a day less the 0.12 that pumps bring are 5.2 days as set; 40 % more, 3.5.
  const days = (at: string) =>
    (Date.parse(`${at}Z`) - Date.parse('2026-05-08T09:00Z')) / 86_400_000;
  expect(days(first.asSetAt)).toBeCloseTo(20 / 3.88, 0);
  expect(days(first.soonestAt)).toBeGreaterThan(20 / (4 * 1.45));
  expect(days(first.soonestAt)).toBeLessThan(20 / (3.8 * 1.35));
  expect(runsOutText(first, NOW)).toMatch(
    /^Runs out first: the reservoir, in a day at the soonest \(11 May 2026; as set 13 May 2026\)\.$/,
  );
  expect(runsOutText(first, '2026-05-20T09:00')).toMatch(/may be empty since 11 May 2026/);
});

it('of two bottles the one that was named counts from its own day, and the smaller ends first', () => {
  const both = soonest(logOf([{ at: '2026-05-01T09:00', event: 'bottleFilled' }]))!;
  // 1.2 L at 60 mL a day are 20 days as set.
  expect([both.what, both.asSetAt.slice(0, 10)]).toEqual(['the bottle of “calcium”', '2026-05-21']);
  const one = soonest(
    logOf([
      { at: '2026-05-01T09:00', event: 'bottleFilled', equipment: ' Soda' },
      { at: '2026-05-02T09:00', event: 'bottleFilled', equipment: 'old jug' },
    ]),
  )!;
  expect(one.what).toBe('the bottle of “soda”');
});

it('what was counted newest stands, powders beside tests, and what lies ahead is none', () => {
  const supplies = [
    { id: 'sodiumCarbonate', left: 60, countedAt: '2026-05-09T09:00' },
    { id: 'tests', left: 1, countedAt: '2026-04-01T09:00' },
  ] as const;
  const tested = { at: '2026-05-09T09:00', alkalinityDkh: 8.4, testsLeft: 30 };
  const first = soonest(logOf([tested], { supplies: [...supplies] }))!;
  // 6 g a day: 60 g are ten days as set.
  expect([first.what, first.asSetAt.slice(0, 10)]).toEqual([
    'sodium carbonate (soda ash)',
    '2026-05-19',
  ]);
  const ahead = logOf([{ at: '2026-05-11T08:00', event: 'reservoirFilled' }]);
  expect(soonest(ahead)).toBeUndefined();
});

it('never later than at the fastest that is thought possible', () => {
  for (const { perDay, mostPerDay, leastPerDay, hasL } of used.vessels) {
    expect(hasL).toBeGreaterThan(0);
    expect(mostPerDay).toBeGreaterThan(perDay);
    expect(leastPerDay).toBeLessThan(perDay);
  }
});
