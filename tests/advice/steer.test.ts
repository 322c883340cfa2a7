import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { emptyLog } from '../../shared/log/tankLog';
import { countedReadings } from '../../shared/log/counted';
import { withNewestWater } from '../../shared/log/newest';
import { lineOf } from '../../shared/verdict/lineResult';
import { metalWants, seasonWants } from '../../src/diary/season/seasonAsked';
import { seasonSentences } from '../../src/say/season/season';
import { steerSentences } from '../../src/say/turn/steer';
import * as ask from '../../workers/desk/logQuestions';
import { stateAfter } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import type { Known } from '../../workers/studies/plan/planQuestion';
import { replayed, widestDay, type Stretch } from '../../workers/studies/turn/replay';
import { patience, runsOf } from '../laws/size';
import { anySeason, type AnySeason } from './anySeason';

const NEWEST = '2026-09-20T10:00';
const ago = (days: number) => localTimeOf(hoursOf(NEWEST) - 24 * days);

/** A log whose metals were read up to a quarter of a year before its newest alkalinity. */
const anyAsked = fc.record({
  any: anySeason,
  agoDays: fc.constantFrom(0, 10, 20, 80),
  level: fc.integer({ min: 70, max: 100 }).map((tenths) => tenths / 10),
  isKnown: fc.boolean(),
  unlinked: fc.boolean(),
  calciumTargetMgPerL: fc.constantFrom(0, 410, 445, 900),
  mostMagnesiumMgPerLPerDay: fc.constantFrom(50, 20),
});
type AnyAsked = typeof anyAsked extends fc.Arbitrary<infer T> ? T : never;

/** All that the page asks about one log, through the functions that it asks with. */
async function asked({ any, agoDays, level, isKnown, unlinked, ...wants }: AnyAsked) {
  const { known: read } = any;
  const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = read.tank;
  const usual = { calciumMgPerL: 430, magnesiumMgPerL: 1330, salinityPractical: 35 };
  const plan = { ...read, tank: { ...read.tank, ...usual } };
  const readings: Reading[] = [
    { at: ago(agoDays + 1), calciumMgPerL, magnesiumMgPerL, salinityPractical },
    { at: ago(3), alkalinityDkh: level },
    { at: NEWEST, alkalinityDkh: level },
  ];
  const log = { ...emptyLog, readings, ...wants, pairUnlinked: unlinked };
  const counted = countedReadings(log, NEWEST);
  const now = withNewestWater(plan, counted.readings);
  const useNow = {
    dkhPerDay: plan.corals.useDkhPerDay,
    standardErrorDkhPerDay: any.giveOrTakeDkhPerDay / 2,
  };
  const known = isKnown ? ({ now, useNow, fit: { now: {} } } as unknown as Known) : undefined;
  const asks = { plan, log: counted.readings, known, wanted: { targetDkh: 8.5, unlinked } };
  const { happened } = counted;
  const turn = await ask.turn(asks);
  const steer = await ask.steer({ plan, told: turn, happened, wants: metalWants(plan, log) });
  const season = await ask.season({ ...asks, happened, ran: [], wants: seasonWants(plan, log) });
  const around = { readings: counted.readings, answer: undefined, now: NEWEST };
  const says = steerSentences(steer, turn, around);
  const told = seasonSentences(season);
  return { plan, turn, steer, season, says, told: [told.headline, ...told.beside].join(' ') };
}

/** "10.6 g calcium chloride dihydrate each morning for 5 days", and every other gram and day that is named. */
const gramsOf = (text: string) => text.match(/[\d.]+ g [a-z ]+? (?:each morning|and)/g) ?? [];
const daysOf = (text: string) =>
  text.match(/(?:each morning for|For|inside after) \d+ days?/g) ?? [];
const litresOf = (text: string) =>
  text.match(/[\d.]+ L (?:a day|a week|\([\d.]+ %\) changed)/g) ?? [];

const columns = {
  calcium: 'calcium_mg_l',
  magnesium: 'magnesium_mg_l',
  salinity: 'salinity_ppt',
} as const;
const options = { ...usualOptions, toleranceUmolPerKg: 0.5 };

/** What nobody tells of a line: a probe's reading, a test's repeat; of alkalinity as the turn's own law has it. */
const UNTOLD: Partial<Record<string, number>> = {
  ...{ ph: 0.1, alkalinity: 0.2, alkalinityChange: 0.05 },
};

/** What the common run does to the tank's true water that the turn alone does not. */
function breachesOf(
  any: AnySeason,
  both: readonly Stretch[],
  level: number,
  most: typeof emptyLog,
) {
  const { truth, known } = any;
  const tank = { ...truth.tank, alkalinityDkh: level };
  const start = { ...truth, tank };
  const inTruth = (one: Stretch, bare: boolean): Stretch => {
    const { dosers, topOff, calciumReactor, additions, waterChanges, days } = one.scenario;
    const poured = additions.filter(({ additive }) => additive === 'sodiumBicarbonate');
    const dosing = { dosers, topOff, calciumReactor, days };
    return {
      ...one,
      scenario: {
        ...{ ...start, ...dosing, additions: bare ? poured : additions },
        waterChanges: bare ? truth.waterChanges : waterChanges,
      },
    };
  };
  const from = stateAfter({ ...start, days: 0 }, options);
  const [run, alone] = [false, true].map((bare) =>
    replayed(
      both.map((one) => inTruth(one, bare)),
      from,
      options,
    ),
  );
  const off = {
    calcium: Math.abs(known.tank.calciumMgPerL - truth.tank.calciumMgPerL),
    magnesium: Math.abs(known.tank.magnesiumMgPerL - truth.tank.magnesiumMgPerL),
    salinity: Math.abs(known.tank.salinityPractical - truth.tank.salinityPractical),
  };
  const allowed = {
    calcium: most.mostCalciumMgPerLPerDay,
    magnesium: most.mostMagnesiumMgPerLPerDay,
    salinity: most.mostSalinityPerDay,
  };
  const passed = run!.lines.flatMap(({ id, quantity, firstH, trouble, worst, limit }) => {
    if (firstH === undefined) return [];
    const before = lineOf(alone!.lines, id);
    const past = trouble === 'above' ? worst - limit : limit - worst;
    const farther = trouble === 'above' ? worst - before.worst : before.worst - worst;
    const unread = quantity in off ? off[quantity as keyof typeof off] : 0;
    const untold = (UNTOLD[quantity] ?? 0.01 * limit) + unread;
    const drifts = !(quantity in off) && before.firstH !== undefined;
    // As the turn's own law has it: what the turn alone passes, too, is none of what is poured beside it.
    if (drifts && (quantity !== 'alkalinity' || before.firstH! - firstH <= 72)) return [];
    const text = `${id} ${worst} (${before.worst} alone)`;
    return past > untold && farther > untold ? [{ text, quantity, firstH }] : [];
  });
  const fast = (Object.keys(columns) as (keyof typeof columns)[]).flatMap((id) => {
    const widest = (one: typeof run) =>
      widestDay(one!.hourly(columns[id]), 0, one!.hourly(columns[id]).length);
    const by = widest(run);
    // What was read wrongly a change of water moves by its share, too.
    const unread = (truth.waterChanges.percent / 100) * off[id];
    const isFast = by > Math.max(allowed[id], widest(alone)) * 1.08 + unread;
    const text = `${id} moves ${by} in a day`;
    return isFast ? [{ text, quantity: id, firstH: 0 }] : [];
  });
  return [...passed, ...fast];
}

it(
  'a turn and a season never name different grams, days or litres, and what is done together harms nobody',
  async () => {
    let poured = 0;
    const breaches: string[] = [];
    await fc.assert(
      fc.asyncProperty(anyAsked, async (one) => {
        const { steer, season, says, told, plan } = await asked(one);
        const text = says.join(' ');
        expect(text).not.toMatch(/NaN|undefined|Infinity/);
        const { steered } = steer;
        for (const named of [gramsOf, daysOf, litresOf]) {
          for (const part of named(text)) expect(told).toContain(part);
        }
        if (!steered) {
          // At ease only where each that was read stays inside while the turn is looked ahead.
          const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = one.any.known.tank;
          const { limits } = plan;
          expect(calciumMgPerL).toBeGreaterThanOrEqual(limits.calciumLowMgPerL);
          expect(calciumMgPerL).toBeLessThanOrEqual(limits.calciumHighMgPerL);
          expect(magnesiumMgPerL).toBeGreaterThanOrEqual(limits.magnesiumLowMgPerL);
          expect(magnesiumMgPerL).toBeLessThanOrEqual(limits.magnesiumHighMgPerL);
          expect(salinityPractical).toBeGreaterThanOrEqual(limits.salinityLowPractical);
          expect(salinityPractical).toBeLessThanOrEqual(limits.salinityHighPractical);
          return;
        }
        expect(steered.first).toEqual(season.season.first);
        expect(steered.weekly).toEqual(season.season.weekly);
        const { together } = steered;
        if (!together) return;
        poured++;
        const most = { ...emptyLog, mostMagnesiumMgPerLPerDay: one.mostMagnesiumMgPerLPerDay };
        const { first } = steered;
        const mornings = first.kind === 'first' ? first.stretch.untilDay : 0;
        const found = breachesOf(one.any, together.stretches, one.level, most);
        // Where alkalinity passes a limit once the mornings are over, that is told.
        const isTold = ({ quantity, firstH }: (typeof found)[number]) =>
          quantity === 'alkalinity' && firstH > mornings * 24 && together.alkalinityPasses;
        breaches.push(...found.flatMap((breach) => (isTold(breach) ? [] : [breach.text])));
      }),
      runsOf(30),
    );
    expect(breaches).toEqual([]);
    expect(poured).toBeGreaterThan(0);
  },
  patience * 4,
);
