import { describe, expect, it } from 'vitest';
import { breathedMmolPerLPerDay } from '../../../shared/processes/unseenRespiration';
import { usualSpreads } from '../../../shared/verdict/spreads';
import { members } from '../../../workers/desk/drillQuestions';
import { letMessagesIn } from '../../../workers/desk/letMessagesIn';
import { usualOptions } from '../../../workers/engine/simulation';
import { drawsOf, memberOf } from '../../../workers/studies/drill/member';
import { runDrill } from '../../../workers/studies/drill/drillRun';
import { rankCorrelation, summaryOf } from '../../../workers/studies/drill/ensembleSummary';
import {
  replayed,
  runMember,
  type MemberResult,
} from '../../../workers/studies/drill/memberResult';
import { patience } from '../../laws/size';
import { scenarioFromFile } from '../scenarioFiles';

const scenario = { ...scenarioFromFile('drill-stuck-pump.json'), days: 2 };
const question = { scenario, spreads: usualSpreads, seed: 7 };

const goesOn = () => letMessagesIn().then(() => true);
const job = { goesOn, tell: () => {} };
const membersOf = async (from: number, to: number): Promise<MemberResult[]> =>
  (await members({ ...question, from, to }, job)) ?? [];

describe('an ensemble', () => {
  it(
    'is the same bit for bit whatever the number of workers and their order',
    async () => {
      const alone = await membersOf(0, 12);
      const [late, early] = await Promise.all([membersOf(6, 12), membersOf(0, 6)]);
      expect(alone).toHaveLength(12);
      expect([...early, ...late]).toEqual(alone);
      expect(new Set(alone.map(({ ph }) => ph.join())).size).toBe(12);
    },
    patience,
  );

  it(
    'can be replayed member by member',
    () => {
      const member = runMember(scenario, usualSpreads, 7, 3, usualOptions);
      const again = runDrill(replayed(scenario, usualSpreads, 7, 3));
      expect(member.lines.map(({ worst }) => worst)).toEqual(again.lines.map(({ worst }) => worst));
    },
    patience,
  );

  it(
    'stops when it is no longer wanted',
    async () => {
      let asked = 0;
      const stops = { ...job, goesOn: async () => ++asked < 3 };
      expect(await members({ ...question, from: 0, to: 10_000 }, stops)).toBeUndefined();
      expect(asked).toBe(3);
    },
    patience,
  );

  it('doubts what is breathed by half by a word, by a sixth where it was typed', () => {
    const still = drawsOf(1, 1);
    const nothing = Object.fromEntries(Object.keys(still).map((id) => [id, 0])) as typeof still;
    const breathed = (own: object, respiration: number) =>
      memberOf({ ...scenario, oxygen: { ...scenario.oxygen, ...own } }, usualSpreads, {
        ...nothing,
        respiration,
      }).oxygen.respirationMmolPerLPerDay;
    const usual = breathedMmolPerLPerDay(scenario);
    expect(breathed({}, 0)).toBe(scenario.oxygen.respirationMmolPerLPerDay);
    expect(breathed({}, 1) / usual).toBeCloseTo(1.5, 9);
    expect(breathed({}, -1) * 1.5).toBeCloseTo(usual, 9);
    expect(breathed({ respirationMmolPerLPerDay: 2 }, 1)).toBeCloseTo(2.3, 9);
  });

  it('draws each respect by itself, with the spread that was stated', () => {
    const draws = Array.from({ length: 4000 }, (_, i) => drawsOf(1, i));
    const volume = draws.map((draw) => draw.volume);
    const mean = volume.reduce((a, b) => a + b) / volume.length;
    const sd = Math.sqrt(volume.reduce((sum, v) => sum + (v - mean) ** 2, 0) / volume.length);
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(4000));
    expect(Math.abs(sd - 1)).toBeLessThan(0.05);
    const pairs = [
      draws.map((draw) => draw.pump),
      draws.map((draw) => draw.hour),
      volume.slice(1).concat(0),
    ];
    for (const other of pairs) expect(Math.abs(rankCorrelation(volume, other))).toBeLessThan(0.06);
  });

  it(
    'names what moves the highest pH, and gives quantiles in order',
    () => {
      const members = Array.from({ length: 40 }, (_, i) =>
        runMember(scenario, { ...usualSpreads, strength: 30 }, 1, i, usualOptions),
      );
      const { causes, lines, ph, highMember } = summaryOf(members);
      expect(causes[0]?.id).toBe('strength');
      expect(causes[0]?.correlation).toBeGreaterThan(0.5);
      for (const { worst } of lines) {
        expect(worst.low).toBeLessThanOrEqual(worst.middle);
        expect(worst.middle).toBeLessThanOrEqual(worst.high);
      }
      expect(ph.length).toBeGreaterThan(20);
      // 95 % of the 39 others are 37: two are higher than the one that is shown as high.
      const peaks = members.map((one) => one.lines.find(({ id }) => id === 'phHigh')!.worst);
      expect(peaks.filter((peak) => peak > peaks[highMember]!)).toHaveLength(2);
    },
    patience,
  );
});
