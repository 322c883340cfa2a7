import { describe, expect, it } from 'vitest';
import { deviceKinds } from '../../shared/devices/registry';
import { eventKinds } from '../../shared/events/registry';
import { processes } from '../../shared/processes/registry';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { refillRow } from '../../shared/trace/refillRow';
import { saltMixes } from '../../shared/water/saltMixes';
import { de } from '../../shared/words/ledger/de';
import { answering } from '../../workers/desk/answer';
import { questions, type QuestionName } from '../../workers/desk/questions';
import { sampledOptions } from '../../workers/engine/sampledOptions';

const soda = { additive: 'sodiumCarbonate', gramsPerL: 60 };
const plan = scenarioOf({
  days: 2,
  tank: { volumeL: 300 },
  topOff: { additive: 'calciumHydroxide', gramsPerL: 1.2 },
  dosers: [{ name: 'the pump by the door', recipe: [soda], mlPerDay: 10 }],
});
const stuck: Scenario = {
  ...plan,
  faults: [newFault('topOffOn', { day: 1, hour: 9, endsAfterH: 3 })],
};
const log = [8.4, 8.3, 8.25, 8.6, 8.5, 8.4].map((alkalinityDkh, i) => ({
  at: `2026-03-0${i + 1}T10:30`,
  ...{ alkalinityDkh, lot: i < 3 ? 'the first bottle' : 'the second bottle' },
  ...(i % 5 === 0 && { calciumMgPerL: 430 - 2 * i, salinityPractical: 35 }),
  ...(i === 2 && { coralsPercent: -20 }),
}));
const wanted = { targetDkh: 8.5, pairNames: { carbonate: 'pump one', calcium: 'pump two' } };
const asks = { plan, log, known: undefined, wanted };
const choices = { kLaPerH: 4, co2Ppm: 5000, co2Hours: 4, changePercent: 20 };

/** What is asked of a worker, and comes back in a few seconds at most. */
const asked: Partial<Record<QuestionName, object>> = {
  trial: plan,
  whatDidIt: { from: plan, to: { ...plan, room: { ...plan.room, co2Ppm: 900 } } },
  layers: { scenario: stuck, hour: 9 },
  responses: { scenario: stuck, choices },
  drill: { ...stuck, days: 1 },
  answer: { plan, log, withinDkhPerDay: 0.1 },
  plans: asks,
};

const headless = { goesOn: () => Promise.resolve(true), tell: () => {} };

/** Every text of a value, with where it stands; what a ledger row is called is `rowName`'s. */
function textsOf(value: unknown, path = ''): string[] {
  if (typeof value === 'string') return path.endsWith('.label') ? [] : [`${path} ${value}`];
  if (!(value instanceof Object) || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([key, part]) => textsOf(part, `${path}.${key}`));
}

/** An id, with the number of what it counts; a moment; a unit. */
const FACT = /^([a-z][A-Za-z\d]*( \d+)?|\d{4}-\d\d-\d\d(T\d\d:\d\d)?|paper-reef\/scenario|1|)$/;
const UNITS = ['dKH', 'dKH/day', '%/day', 'mmol/L/day', 'pH', '%'];

describe('an answer of a worker', () => {
  it.each(Object.keys(asked) as QuestionName[])(
    '%s is ids and numbers, and the keeper’s own words',
    async (name) => {
      const work = (await questions[name]()) as (asked: unknown, job: unknown) => unknown;
      const answer = await work(asked[name], headless);
      expect(answer).toBeDefined();
      const own = new Set(
        textsOf([asked[name], plan, wanted, saltMixes]).map((text) =>
          text.slice(text.indexOf(' ') + 1),
        ),
      );
      const unsaid = textsOf(answer).filter((text) => {
        const said = text.slice(text.indexOf(' ') + 1);
        return !own.has(said) && !UNITS.includes(said) && !FACT.test(said);
      });
      expect(unsaid).toEqual([]);
    },
    60_000,
  );

  it('that failed has a code and values', async () => {
    const windy = { ...plan, room: { ...plan.room, co2Factor: '1 + 0.2*sim(t)' } };
    const answer = await answering(() => sampledOptions(windy));
    const problem = { fault: { kind: 'notCalled', name: 'sim' }, at: 8 };
    expect(answer).toEqual({
      kind: 'failed',
      failure: {
        code: 'unreadExpressions',
        wrong: [{ path: 'room.co2Factor', text: '1 + 0.2*sim(t)', problem }],
      },
    });
  });
});

it('every row of the ledger has a word of its own in German', () => {
  const full = {
    ...plan,
    outflows: { ...plan.outflows, leakLPerDay: 1, skimmingLPerDay: 1 },
    waterChanges: { ...plan.waterChanges, continuousLPerDay: 2 },
  };
  const pipes = deviceKinds
    .flatMap((kind) => kind.build(full, {}))
    .flatMap(({ pipes: own }) => own);
  const named: readonly { readonly id: string }[] = [
    ...processes,
    ...eventKinds,
    ...pipes.filter(({ from }) => !from.startsWith('stock')),
    refillRow,
  ];
  expect(named.length).toBeGreaterThan(20);
  const known: readonly string[] = Object.keys(de);
  expect(named.map(({ id }) => id).filter((id) => !known.includes(id))).toEqual([]);
});
