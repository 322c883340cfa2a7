import { describe, expect, it } from 'vitest';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualTargets } from '../../shared/recipe/seasonTargets';
import { twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { usualOptions } from '../../workers/engine/simulation';
import { season } from '../../workers/studies/season/season';
import { pastRun, pastScenario } from '../../workers/studies/season/pastRun';
import { whyMoved, type Moved } from '../../workers/studies/season/why';
import { seasonRows } from '../../src/say/season/rows';
import { seasonSentences } from '../../src/say/season/season';
import { signed } from '../../src/say/season/texts';
import { strayTexts } from '../../src/say/season/moved';
import { seasonAnswerJson } from '../../src/cli/seasonJson';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { withoutUnits } from './unitNames';
import { seasonSaltsChecks } from './checks/seasonSalts';

const FROM = '2026-05-01T10:00';
const DAYS = [0, 30, 60, 90, 120];
const at = (day: number) => localTimeOf(hoursOf(FROM) + day * 24);

/** A tank on a pair that nearly holds it, with the plan's weekly changes. */
function paired(): Scenario {
  const bare = scenarioOf({
    tank: { volumeL: 300, alkalinityDkh: 8.4 },
    corals: { useDkhPerDay: 1, growthPercentPerDay: 0 },
    waterChanges: { percent: 10 },
    evaporation: { litresPerDay: 4 },
  });
  return { ...bare, dosers: twoPart('sodiumCarbonate', 56.6, bare) };
}

/** What kits would have read of a tank that runs by a plan, to the digit. */
function readOf(truth: Scenario, offsets: Partial<Record<'calcium' | 'magnesium', number>> = {}) {
  const past = {
    ...{ plan: truth, readings: [], ran: [], cutsH: [] },
    ...{ startH: hoursOf(FROM), endH: hoursOf(at(DAYS.at(-1)!)) },
  };
  const course = pastRun(past, pastScenario(past), truth.corals.useDkhPerDay, usualOptions);
  const of = (column: Parameters<typeof course.hourly>[0], day: number) =>
    course.hourly(column)[day * 24]!;
  return DAYS.map((day): Reading => ({
    at: at(day),
    alkalinityDkh: Number(of('alkalinity_dkh', day).toFixed(1)),
    calciumMgPerL: Math.round(of('calcium_mg_l', day) + (offsets.calcium ?? 0)),
    magnesiumMgPerL: Math.round(of('magnesium_mg_l', day) + (offsets.magnesium ?? 0)),
    salinityPractical: Number(of('salinity_ppt', day).toFixed(1)),
  }));
}

const why = (plan: Scenario, readings: readonly Reading[]) =>
  whyMoved({ plan, readings, ran: [], backDays: 240, useDkhPerDay: 1 }, usualOptions);
const of = (moved: readonly Moved[], id: Moved['id']) => moved.find((one) => one.id === id)!;
/** On the evening of the newest line, of a log that no use was read from. */
const around = (readings: readonly Reading[]) => ({
  ...{ readings, answer: undefined, now: readings.at(-1)?.at ?? FROM },
});

const told = (plan: Scenario, readings: readonly Reading[]) => {
  const question = {
    ...{ plan, now: plan, readings, ran: [], backDays: 240, useDkhPerDay: 1 },
    ...{ giveOrTakeDkhPerDay: 0.1, targets: usualTargets(plan), mostPerDay: usualMostPerDay },
  };
  return { question, season: season(question, usualOptions), isRead: true };
};

describe('what moved calcium, magnesium and salinity', () => {
  it(
    'is told by shares that add up to the move, with nothing amiss where the log is the plan’s',
    () => {
      const { moved, span } = why(paired(), readOf(paired()));
      expect(span!.useIsRead).toBe(true);
      expect(span!.useDkhPerDay).toBeCloseTo(1, 1);
      for (const { since } of moved) {
        const sum = since!.shares.reduce((all, share) => all + share.moved, 0);
        expect(Math.abs(sum - since!.planned)).toBeLessThan(0.5);
        expect(since!.differs).toBe(false);
      }
      const salinity = of(moved, 'salinity').since!;
      expect(salinity.shares[0]!.mover).toBe('pumps');
      expect(salinity.planned).toBeGreaterThan(0.3);
    },
    patience,
  );

  it('tells salt that stays when water goes: without a top-off the level moves all three', () => {
    const dry = scenarioOf({
      tank: { volumeL: 300, alkalinityDkh: 8.4 },
      corals: { useDkhPerDay: 0.1 },
      evaporation: { litresPerDay: 1 },
      topOff: { reservoirL: 0 },
    });
    const readings = [0, 20].map((day): Reading => ({
      at: at(day),
      ...{ calciumMgPerL: 430 + day, magnesiumMgPerL: 1300 + 4 * day, salinityPractical: 35 },
    }));
    for (const { id, since } of why(dry, readings).moved) {
      const sum = since!.shares.reduce((all, share) => all + share.moved, 0);
      expect(Math.abs(sum - since!.planned)).toBeLessThan(id === 'salinity' ? 0.05 : 1);
      expect(since!.shares.find(({ mover }) => mover === 'level')!.moved).toBeGreaterThan(0.9);
    }
  });

  it('finds a kit that reads a constant too high, where water changes show it', () => {
    const calcium = of(why(paired(), readOf(paired(), { calcium: 45 })).moved, 'calcium').since!;
    expect(calcium.differs).toBe(true);
    const [kit] = calcium.would;
    expect(kit?.kind === 'kit' && Math.abs(kit.readsHigh! - 45)).toBeLessThan(15);
  });

  it('finds a bag that holds less magnesium than was typed', () => {
    const { waterChanges } = paired();
    const salt = { ...waterChanges.salt, magnesiumMgPerL: 1150 };
    const truth = { ...paired(), waterChanges: { ...waterChanges, salt } };
    const magnesium = of(why(paired(), readOf(truth)).moved, 'magnesium').since!;
    expect(magnesium.differs).toBe(true);
    const bag = magnesium.would.find(({ kind }) => kind === 'bag');
    expect(bag?.kind === 'bag' && Math.abs(bag.holds - 1150)).toBeLessThan(25);
    // Only the order of what would tell is a choice: a kit is looked at first.
    expect(magnesium.would[0]!.kind).toBe('kit');
  });

  it('finds calcium that nobody wrote down, in grams a week', () => {
    const readings = readOf(paired());
    const gramsPerWeek = 20;
    const truth = {
      ...paired(),
      dosers: [
        ...paired().dosers,
        {
          ...paired().dosers[1]!,
          name: 'unlogged',
          recipe: [
            { additive: 'calciumChlorideDihydrate' as const, gramsPerL: gramsPerWeek / 7 / 0.01 },
          ],
          mlPerDay: 10,
        },
      ],
    };
    const withMore = readOf(truth).map((reading, i) => ({
      ...readings[i]!,
      calciumMgPerL: reading.calciumMgPerL!,
    }));
    const calcium = of(why(paired(), withMore).moved, 'calcium').since!;
    expect(calcium.differs).toBe(true);
    const unlogged = calcium.would.find(({ kind }) => kind === 'unlogged');
    // What water changes took away again is not in it: less than was poured, and the right size.
    expect(unlogged?.kind === 'unlogged' && unlogged.gramsPerWeek).toBeGreaterThan(5);
    expect(unlogged?.kind === 'unlogged' && unlogged.gramsPerWeek).toBeLessThan(22);
  });

  it('is not told from one reading: a level without a slope', () => {
    const { moved, span } = why(paired(), readOf(paired()).slice(0, 1));
    expect(span).toBeUndefined();
    expect(moved.map(({ since }) => since)).toEqual([undefined, undefined, undefined]);
    expect(of(moved, 'calcium').latest!.value).toBeGreaterThan(400);
  });
});

describe('a season in sentences', () => {
  it(
    'answers from the untouched default and an empty log without a number that is none',
    () => {
      const plan = scenarioOf({ tank: { volumeL: 300, alkalinityDkh: 8.4 } });
      const answer = told(plan, []);
      const { headline, beside, more } = seasonSentences(answer, around(answer.question.readings));
      const all = [headline, ...beside, ...more].join(' ');
      expect(all).not.toMatch(/NaN|undefined|Infinity/);
      expect(all).toContain('read twice');
      expect(all).toContain('Nobody has read calcium, magnesium and salinity');
      expect(seasonRows(answer, false).map(({ add }) => add)).toEqual([
        'nothing',
        'nothing',
        'nothing',
      ]);
    },
    patience,
  );

  it(
    'answers the keeper whose calcium crept up and whose magnesium fell',
    () => {
      const readings = DAYS.map((day, i): Reading => ({
        at: at(day),
        alkalinityDkh: 8.4,
        calciumMgPerL: 425 + 6 * i,
        magnesiumMgPerL: 1330 - 32 * i,
        salinityPractical: Number((35 + 0.12 * i).toFixed(1)),
      }));
      const answer = told(paired(), readings);
      const { headline, beside, more } = seasonSentences(answer, around(answer.question.readings));
      const strays = strayTexts(answer.season);
      const all = [headline, ...beside, ...more, ...strays.map(({ title }) => title)].join(' ');
      expect(all).not.toMatch(/NaN|undefined|Infinity/);
      expect(headline).toMatch(/Magnesium has fallen by \d+ mg\/L since 1 May/);
      expect(headline).toMatch(/Add \d+(\.\d)? g magnesium chloride hexahydrate each morning/);
      expect(headline).toMatch(/change [\d.]+ L a week with new water mixed to 3\d(\.\d)? ppt/);
      expect(strays.length).toBeGreaterThan(0);
      const { first, weekly } = answer.season;
      expect(first.kind === 'first' && first.ends.magnesium).toBeCloseTo(1325, -1);
      expect(weekly.kind).toBe('turned');
      const json: unknown = JSON.parse(JSON.stringify(seasonAnswerJson(answer)));
      expect(withoutUnits(json)).toEqual([]);
    },
    patience,
  );
});

it('tells no sign of nothing', () => {
  expect([-0.3, 0.2, -0.6, 42].map((by) => signed('magnesium', by))).toEqual([
    '0',
    '0',
    '−1',
    '+42',
  ]);
  expect([-0.04, 0.06].map((by) => signed('salinity', by))).toEqual(['0.0', '+0.1']);
});

it(
  'weighs by the mass fractions of the salts, and a pair leaves the salt of its stoichiometry',
  () => {
    const checks = seasonSaltsChecks();
    expect(checks).toHaveLength(5);
    expect(misses(checks)).toEqual([]);
  },
  patience,
);
