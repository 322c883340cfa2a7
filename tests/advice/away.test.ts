import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import { quantityAt } from '../../shared/scenario/fields';
import { newFault } from '../../shared/scenario/newFault';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { lineOf } from '../../shared/verdict/lineResult';
import { awaySentences } from '../../src/say/away/away';
import { failureText, worstSentence } from '../../src/say/away/failures';
import { litres } from '../../src/say/away/texts';
import { topUpTexts } from '../../src/say/away/provision';
import { sightsOf } from '../../src/diary/away/sights';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { away, type Away, type AwayQuestion } from '../../workers/studies/away/away';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { margins, mostGiven, thirstiest } from '../../workers/studies/away/needs';
import { atHome, leftWith, provided } from '../../workers/studies/away/provided';
import { unattended } from '../../workers/studies/away/unattended';
import { nobodyLooks } from '../../workers/studies/away/unnoticed';
import { dayMeans } from '../../workers/studies/dayMeans';
import { dumpHolds, RIM } from '../../workers/studies/plan/fullDump';
import { withUse } from '../../workers/studies/plan/useEnds';
import { patience, runsOf } from '../laws/size';
import { anyTurn, type AnyTurn } from './anyTurn';

/** An absence takes a second: at full size five hundred, else a handful. */
const full = runsOf(500);
const sized = { ...full, numRuns: full.numRuns < 500 ? Math.ceil(full.numRuns / 20) : 500 };
/** Of these one in so many has its failures run, too. */
const FAILURES_EVERY = 6;

/** At its target, and as much taken as comes in: a tank that anybody would leave alone. */
function steady(any: AnyTurn): AnyTurn {
  const at = (plan: Scenario): Scenario => ({
    ...plan,
    tank: { ...plan.tank, alkalinityDkh: any.targetDkh },
  });
  return balanced({ ...any, truth: at(any.truth), known: at(any.known) });
}

function balanced(any: AnyTurn): AnyTurn {
  const dkh = readColumn(run({ ...any.truth, days: 2 }).trace, 'alkalinity_dkh');
  const fell = (dkh[0]! - dkh.at(-1)!) / 2;
  const moved = (plan: Scenario) => withUse(plan, plan.corals.useDkhPerDay - fell);
  return { ...any, truth: moved(any.truth), known: moved(any.known) };
}

const absence = fc.record({
  any: fc.oneof(anyTurn.map(steady), anyTurn),
  days: fc.noBias(fc.integer({ min: 1, max: 21 })),
  visitDays: fc.noBias(fc.integer({ min: 0, max: 7 })),
  bottleShare: fc.noBias(fc.integer({ min: 2, max: 20 })),
});

/** Bottles that hold from two days on to twenty. */
const bottled = (plan: Scenario, days: number): Scenario => ({
  ...plan,
  dosers: plan.dosers.map((doser) => ({
    ...doser,
    stockL: Math.max(0.05, (doser.mlPerDay * days) / 1000),
  })),
});

/** Read 0.05 off; and what the law of growth makes of it. */
const READ_DKH = 0.25;

/** What a tank that was promised to stay inside does in its true water. */
function breachesInTruth({ truth }: AnyTurn, { provided: told }: Away): string[] {
  const days = told.insideDays;
  const left = leftWith(
    { ...told, scenario: { ...told.scenario, corals: truth.corals, tank: truth.tank } },
    days,
  );
  const { run: own, reservoirDryH, bottlesDryH } = new LeftTank(left, usualOptions).run(left);
  const { alkalinityLowDkh: low, alkalinityHighDkh: high } = truth.limits;
  const start = truth.tank.alkalinityDkh;
  const means = dayMeans([...readColumn(own.trace, 'alkalinity_dkh')]);
  return [
    ...(reservoirDryH === undefined ? [] : [`reservoir empty after ${reservoirDryH} h`]),
    ...bottlesDryH.flatMap((dryH) => (dryH === undefined ? [] : [`bottle empty after ${dryH} h`])),
    ...means
      .filter(
        (dkh) => dkh < Math.min(low, start) - READ_DKH || dkh > Math.max(high, start) + READ_DKH,
      )
      .map((dkh) => `a day at ${dkh}`),
  ];
}

const LEAST_L = quantityAt(['dosers', 0, 'stockL']).quantity.min;
const withBottle = (plan: Scenario, pump: number, stockL: number): Scenario => ({
  ...plan,
  dosers: plan.dosers.map((one, i) => (i === pump ? { ...one, stockL } : one)),
});

/** Whether a stuck pump that empties its bottle at once passes a line of harm, day or night, with chalk or without. */
function bottleHarms(plan: Scenario, pump: number): boolean {
  const { stockL, schedule } = plan.dosers[pump]!;
  const hours = Math.ceil((stockL * 1000) / (schedule.pumpMlPerMin * 60)) + 1;
  return [2, 14].some((hour) => {
    const fault = newFault('doserOn', { day: 1, hour, endsAfterH: hours, pump: pump + 1 });
    const calm = { ...unattended(plan, hours / 24), start: { ...plan.start, clockHour: hour } };
    const passes = (own: Scenario, id: string) => lineOf(run(own).lines, id).firstH !== undefined;
    // What is passed with nothing stuck is no bottle's doing.
    return ['phHarm', 'alkalinityHigh'].some(
      (id) => passes({ ...calm, faults: [fault] }, id) && !passes(calm, id),
    );
  });
}

/** What a promise leaves empty where it is used fastest: by visits where somebody fills it up, else for all days. */
function standsEmpty({ provided: told, comesDays, vessels, topUps }: Away): string[] {
  const { scenario, insideDays: days } = told;
  return vessels.flatMap(({ pump, name = 'reservoir' }) => {
    const isFilledUp = topUps.some((one) => one.pump === pump);
    const plan = unattended(scenario, isFilledUp ? comesDays : days);
    const fastest = pump === undefined ? thirstiest(plan) : mostGiven(plan);
    const { reservoirDryH, bottlesDryH } = new LeftTank(plan, usualOptions).run(fastest);
    const dryH = pump === undefined ? reservoirDryH : bottlesDryH[pump];
    return dryH === undefined ? [] : [`${name} after ${dryH} h of ${plan.days} days`];
  });
}

it(
  'what is left does no harm all at once or says so, lasts where it is used fastest, and hand arithmetic is not better',
  async () => {
    const breaches: string[] = [];
    const ofReservoirs: { own: number; byHand: number }[] = [];
    let [lasted, lastedByHand, kept, promised, refused, tried] = [0, 0, 0, 0, 0, 0];
    const took: number[] = [];
    const litresOfBottles: { own: number; byHand: number }[] = [];
    const shortOf: string[] = [];
    let [ownHarms, handHarms] = [0, 0];
    await fc.assert(
      fc.asyncProperty(absence, async ({ any, days, visitDays, bottleShare }) => {
        const now = bottled(any.known, bottleShare);
        const { giveOrTakeDkhPerDay } = any;
        const question: AwayQuestion = { now, giveOrTakeDkhPerDay, days, visitDays };
        const begun = performance.now();
        const found = away(question);
        took.push(performance.now() - begun);
        const asked = { question, away: found, isRead: true };
        const { headline, beside, more } = awaySentences(asked, [], undefined);
        for (const text of [headline, ...beside, ...more, ...topUpTexts(found)]) {
          expect(text).not.toMatch(/NaN|undefined|Infinity|[^\d]-\d/);
        }
        const isKept = found.provided.insideDays >= days;
        // Fewer days than asked are a promise, too.
        const isPromised = found.provided.insideDays >= 1;
        promised += Number(isPromised);
        const off = Math.abs(any.known.corals.useDkhPerDay - any.truth.corals.useDkhPerDay);
        if (isKept) kept++;
        else {
          refused++;
          expect(found.wayOut).toBeDefined();
        }
        // Once in twenty the use is farther off than its doubt says: nothing was promised of that.
        if (isPromised && off <= giveOrTakeDkhPerDay) breaches.push(...breachesInTruth(any, found));
        if (found.asked) {
          expect(found.asked.insideDays).toBeLessThan(days);
          expect(found.comesDays).toBeGreaterThan(0);
        }
        const { scenario } = found.provided;
        for (const vessel of found.vessels) {
          const { pump, leaveL, harms, needL, name } = vessel;
          // Headline, plan and trial say the same litres.
          const own = (plan: Scenario) =>
            pump === undefined ? plan.topOff.reservoirL : plan.dosers[pump]!.stockL;
          expect(own(scenario)).toBe(leaveL);
          if (found.trial) expect(own(found.trial)).toBe(leaveL);
          const said = [headline, ...beside].join(' ');
          if (leaveL > 0) expect(said).toContain(`${litres(leaveL)} L`);
          // Law 2: what does harm is offered where it lasts and nothing else does, or nothing a day.
          if (harms) {
            expect(said).toMatch(/^Nothing that lasts is harmless/);
            const lastsDays = found.vessels.map(
              (one) => (one.harmless?.litres ?? Infinity) / one.dailyMostL,
            );
            expect(isKept || (isPromised && Math.min(...lastsDays) < 1)).toBe(true);
          }
          if (pump === undefined) {
            expect(dumpHolds(scenario, RIM)).toBe(true);
            // What stands outside already is no mix's doing.
            const isOut = now.tank.alkalinityDkh >= now.limits.alkalinityHighDkh;
            if (!harms && !isOut && leaveL > 0) expect(dumpHolds(scenario)).toBe(true);
          } else {
            const ownDump = bottleHarms(scenario, pump);
            if (!harms && leaveL > LEAST_L) expect(ownDump, name).toBe(false);
            const ml = now.dosers[pump]!.mlPerDay * days * (1 + margins.delivery);
            litresOfBottles.push({ own: leaveL, byHand: ml / 1000 });
            handHarms += Number(bottleHarms(withBottle(scenario, pump, ml / 1000), pump));
            ownHarms += Number(ownDump);
            // What may be needed is the arithmetic, as fine as anybody fills.
            expect(needL! * 1000).toBeGreaterThan(ml);
            expect(needL! * 1000).toBeLessThan(ml * 1.26 + 11);
          }
        }
        if (isPromised) shortOf.push(...standsEmpty(found));
        const [reservoir] = found.vessels;
        const filled = (litresL: number): Scenario => ({
          ...unattended(now, days),
          topOff: { ...now.topOff, refillEveryDays: 0, reservoirL: litresL },
          dosers: now.dosers.map((doser, i) => ({
            ...doser,
            stockL: found.vessels.find(({ pump }) => pump === i)?.needL ?? doser.stockL,
          })),
        });
        const lasts = (litresL: number): boolean => {
          const plan = filled(litresL);
          const tank = new LeftTank(plan, usualOptions);
          const runs = [tank.run(plan), tank.run(thirstiest(plan)), tank.run(mostGiven(plan))];
          return runs.every(
            (one, i) =>
              one.reservoirDryH === undefined &&
              (i === 1 || one.bottlesDryH.every((dryH) => dryH === undefined)),
          );
        };
        // The keeper's arithmetic: days times what evaporates, with the same margin.
        const byHand = days * now.evaporation.litresPerDay;
        tried++;
        lasted += Number(lasts(reservoir!.needL!));
        lastedByHand += Number(lasts(byHand));
        ofReservoirs.push({ own: reservoir!.needL!, byHand: byHand * (1 + margins.evaporation) });
        if (tried % FAILURES_EVERY === 1) {
          const looks = (await nobodyLooks(
            ...([found, usualHandAir, usualOptions] as const),
            async () => true,
          ))!;
          expect(looks.failures.length).toBeGreaterThan(3);
          for (const text of [
            ...looks.failures.map(failureText),
            worstSentence(looks, found.provided.scenario),
          ]) {
            expect(text).not.toMatch(/NaN|undefined|Infinity|[^\d]-\d/);
          }
          // A sitter has eyes and dry hands, and no kit.
          const sights = sightsOf(asked, looks);
          expect(sights.map(({ id }) => id).slice(0, 3)).toEqual(['floor', 'dark', 'still']);
          for (const { sees, act, call } of sights) {
            expect(`${sees} ${act} ${call}`).not.toMatch(
              /NaN|undefined|Infinity|[Tt]est|[Mm]easure|alkalinity|pH|salinity/,
            );
            expect(call).toMatch(/the keeper/);
          }
        }
      }),
      sized,
    );
    const shares = ofReservoirs.map(({ own, byHand }) => own / byHand);
    const ms = took.toSorted((a, b) => a - b);
    console.log(
      [
        `lasted ${lasted} of ${tried} (days × evaporation ${lastedByHand})`,
        `litres against days × evaporation × ${1 + margins.evaporation}: median ${median(shares)!.toFixed(3)}, most ${Math.max(...shares).toFixed(3)}`,
        `bottles that do harm at once: ${ownHarms} of ${litresOfBottles.length} as left (mL a day × days × ${1 + margins.delivery}: ${handHarms})`,
        `kept ${kept}, for fewer days ${promised - kept}, not kept ${refused}, broken in truth ${breaches.length}`,
        `ms p50 ${ms[Math.floor(ms.length / 2)]!.toFixed(0)}, most ${ms.at(-1)!.toFixed(0)}`,
      ].join('; '),
    );
    expect(breaches).toEqual([]);
    expect(shortOf).toEqual([]);
    expect(ownHarms).toBeLessThanOrEqual(handHarms);
    expect(lasted).toBe(tried);
    expect(lastedByHand).toBeLessThanOrEqual(lasted);
    // Nobody carries more water than the arithmetic with the same margin asks for, but for rounding.
    expect(median(shares)!).toBeLessThan(1.02);
  },
  patience * 6,
);

const pair = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1 },
  evaporation: { litresPerDay: 4 },
  dosers: [
    {
      ...{ name: 'soda', mlPerDay: 90, stockL: 0.5 },
      recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 60 }],
    },
  ],
});

it('an empty bottle stays empty, and what comes of it is said', () => {
  const plan = leftWith(
    { kind: 'filled', scenario: pair, refillEveryDays: 0, refilledPumps: [] },
    9,
  );
  const { run: own, bottlesDryH } = new LeftTank(plan, usualOptions).run(plan);
  // 500 mL at 90 mL a day by hand.
  expect(bottlesDryH[0]! / 24).toBeCloseTo(500 / 90, 2);
  const dkh = readColumn(own.trace, 'alkalinity_dkh');
  expect(dkh[5 * 24]! - dkh[4 * 24]!).toBeGreaterThan(-0.2);
  expect(dkh[9 * 24]! - dkh[8 * 24]!).toBeLessThan(-0.6);
});

it('plain water thins the mix that stands there, and does not take its place', () => {
  const lime = scenarioOf({
    tank: { volumeL: 300 },
    corals: { useDkhPerDay: 1.2 },
    evaporation: { litresPerDay: 4 },
    topOff: { reservoirL: 20, additive: 'calciumHydroxide', gramsPerL: 1 },
  });
  const endsAt = (kind: 'mixed' | 'toppedUp' | 'plain') => {
    const plain = { ...lime, topOff: { ...lime.topOff, additive: 'none' as const } };
    const scenario = kind === 'plain' ? plain : lime;
    const left = leftWith({ kind, scenario, refillEveryDays: 3, refilledPumps: [] }, 6);
    const { run: own } = new LeftTank(left, usualOptions).run(left);
    return readColumn(own.trace, 'alkalinity_dkh').at(-1)!;
  };
  expect(endsAt('mixed')).toBeGreaterThan(endsAt('toppedUp') + 0.3);
  expect(endsAt('toppedUp')).toBeGreaterThan(endsAt('plain') + 1);
});

it('two pumps of one name each get their own bottle, and a tank on both can be left with visits', () => {
  const [soda] = pair.dosers;
  const half = { ...soda!, mlPerDay: 45 };
  const now = {
    ...pair,
    dosers: [half, { ...half, mlPerDay: 49, stockL: 2 }],
    // Nothing brings calcium here, and it is not what is asked.
    limits: { ...pair.limits, calciumLowMgPerL: 300 },
  };
  const found = away({ now, giveOrTakeDkhPerDay: 0.04, days: 12, visitDays: 2 });
  // From 8.4 dKH to 0.3 below 11 there are 2.3: of 60 g/L soda ash, 105.99 g/mol, in 300 L by hand 217 mL.
  const mostL = (2.3 * 0.35665 * 300) / ((60 * 2 * 1000) / 105.99);
  for (const { stockL } of found.provided.scenario.dosers) expect(stockL).toBeCloseTo(mostL, 2);
  // 12 days of 45 mL with a fifth more by hand: 0.648 L.
  expect(found.vessels.map(({ needL }) => needL)).toEqual([expect.any(Number), 0.7, 0.75]);
  expect(found.provided.kind).toBe('toppedUp');
  expect(found.provided.refilledPumps).toEqual([0, 1]);
  expect(found.wayOut).toBeUndefined();
  const [water, first] = found.topUps;
  // 2 days of 4 L with two fifths more, less what the pumps bring, by hand: 11 L; and 108 mL.
  expect(water!.mostL).toBeGreaterThan(10.5);
  expect(water!.mostL).toBeLessThan(12.5);
  expect(first!.mostL).toBe(0.11);
  expect(topUpTexts(found)[1]).toContain('(0.217 L)');
});

it('what lasts only where all of it at once does harm is said to do so first', () => {
  // From 8.4 dKH to 0.3 below 9 there are 0.3, a third of a day's dosing: not even daily visits do.
  const limits = { ...pair.limits, alkalinityHighDkh: 9, calciumLowMgPerL: 300 };
  const now = { ...pair, limits, dosers: [{ ...pair.dosers[0]!, stockL: 2 }] };
  const question = { now, giveOrTakeDkhPerDay: 0.02, days: 5, visitDays: 0 };
  const asked = { question, away: away(question), isRead: true };
  const { headline, beside } = awaySentences(asked, [], undefined);
  expect(asked.away.vessels.map(({ harms }) => harms)).toEqual([false, true]);
  expect(headline).toMatch(
    /^Nothing that lasts is harmless: 0\.55 L in the bottle of “soda” \(up to 0\.028 L does none\) does harm/,
  );
  expect(headline).toMatch(
    /It can be left alone for 5 days: leave .+ 0\.55 L in the bottle of “soda”/,
  );
  expect(beside.join(' ')).toMatch(/No more than 0\.028 L may stand in the bottle of “soda”/);
});

it('a tank that dries up for want of a top-off is refused with what would do', () => {
  const corals = { ...pair.corals, useDkhPerDay: 0.1 };
  const bare = { ...pair, corals, dosers: [], topOff: { ...pair.topOff, reservoirL: 0 } };
  const question = { now: bare, giveOrTakeDkhPerDay: 0.1, days: 20, visitDays: 0 };
  const asked = { question, away: away(question), isRead: true };
  const { headline, beside } = awaySentences(asked, [], undefined);
  expect(headline).toMatch(
    /^Not for 20 days: the reservoir may stand empty, first on day \d.+ It can for \d/,
  );
  expect(beside.join(' ')).toMatch(/There is no top-off: what evaporates, up to [\d.]+ L a day/);
});

it('says what stands on no reading', () => {
  const question = { now: pair, giveOrTakeDkhPerDay: 0.2, days: 3, visitDays: 0 };
  const asked = { question, away: away(question), isRead: false };
  const { beside } = awaySentences(asked, [], undefined);
  expect(beside.join(' ')).toMatch(
    /No alkalinity has been read.*Nobody has measured the use: 1\.00/s,
  );
});

it('a failure that lasts until somebody comes is met sooner on an earlier visit', async () => {
  const asked = async (comesDays: number) => {
    const home = atHome(pair, 0, usualOptions);
    const kept = provided(
      { kind: 'filled', scenario: pair, refillEveryDays: 0, refilledPumps: [] },
      { days: 4, vessels: [], home },
      usualOptions,
    )!;
    const left = { days: 4, comesDays, provided: kept };
    const looks = await nobodyLooks(left, usualHandAir, usualOptions, async () => true);
    return looks!.failures.find(({ fault }) => fault.kind === 'doserOff')!;
  };
  const [never, daily] = [await asked(0), await asked(1)];
  expect(never.harm?.line.id).toBe('alkalinityHarm');
  expect(daily.harm).toBeUndefined();
  expect(failureText(daily)).toMatch(/Somebody comes .* before that|Somebody comes/);
});
