import fc from 'fast-check';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { emptyLog } from '../../shared/log/tankLog';
import { countedReadings } from '../../shared/log/counted';
import { withNewestWater } from '../../shared/log/newest';
import { metalWants, seasonWants } from '../../src/diary/season/seasonAsked';
import { seasonSentences } from '../../src/say/season/season';
import { steerSentences } from '../../src/say/turn/steer';
import * as ask from '../../workers/desk/logQuestions';
import type { Known } from '../../workers/studies/plan/planQuestion';
import { runsOf } from '../laws/size';
import { anySeason } from './anySeason';

const NEWEST = '2026-09-20T10:00';
const ago = (days: number) => localTimeOf(hoursOf(NEWEST) - 24 * days);

/** A log whose metals were read up to a quarter of a year before its newest alkalinity. */
export const anySteer = fc.record({
  any: anySeason,
  agoDays: fc.constantFrom(0, 10, 20, 80),
  level: fc.integer({ min: 70, max: 100 }).map((tenths) => tenths / 10),
  isKnown: fc.boolean(),
  unlinked: fc.boolean(),
  calciumTargetMgPerL: fc.constantFrom(0, 410, 445, 900),
  mostMagnesiumMgPerLPerDay: fc.constantFrom(50, 20),
});
export type AnySteer = typeof anySteer extends fc.Arbitrary<infer T> ? T : never;

/** What the page asks with: plan, log, and what is known of the tank. */
export function steerQuestion({ any, agoDays, level, isKnown, unlinked, ...wants }: AnySteer) {
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
  const nothing = { doses: [], change: undefined };
  const tells = { now, useNow, habits: nothing, fit: { now: {}, endH: 0 } };
  const known = isKnown ? (tells as unknown as Known) : undefined;
  const asks = { plan, log: counted.readings, known, wanted: { targetDkh: 8.5, unlinked } };
  return { plan, log, asks, happened: counted.happened };
}

/** All that the page asks about one log, through the functions that it asks with. */
export async function steerAsked(one: AnySteer) {
  const { plan, log, asks, happened } = steerQuestion(one);
  const turn = await ask.turn(asks);
  const steer = await ask.steer({ plan, told: turn, happened, wants: metalWants(plan, log) });
  const season = await ask.season({
    ...asks,
    told: turn,
    happened,
    ran: [],
    wants: seasonWants(plan, log),
  });
  const around = { readings: asks.log, answer: undefined, now: NEWEST };
  const says = steerSentences(steer, turn, around);
  const told = seasonSentences(season, around);
  const wants = metalWants(plan, log);
  return {
    one,
    plan,
    asks,
    happened,
    wants,
    turn,
    steer,
    season,
    says,
    told: [told.headline, ...told.beside].join(' '),
  };
}

type SteerAsked = Awaited<ReturnType<typeof steerAsked>>;
let asked: Promise<SteerAsked[]> | undefined;

async function askAll(): Promise<SteerAsked[]> {
  const logs: AnySteer[] = [];
  fc.assert(
    fc.property(anySteer, (one) => {
      logs.push(one);
    }),
    runsOf(30),
  );
  const all: SteerAsked[] = [];
  for (const one of logs) all.push(await steerAsked(one));
  return all;
}

/** Thirty logs at full size, each asked once: a turn, a steer and a season take some seconds. */
export const steeredLogs = (): Promise<SteerAsked[]> => (asked ??= askAll());
