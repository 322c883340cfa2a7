import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import { awaySentences } from '../../src/say/away/away';
import { failureText, worstSentence } from '../../src/say/away/failures';
import { filled } from '../../src/say/away/texts';
import { topUpTexts } from '../../src/say/away/provision';
import { sightsOf } from '../../src/diary/away/sights';
import { usualOptions } from '../../workers/engine/simulation';
import { away, type AwayQuestion } from '../../workers/studies/away/away';
import { margins } from '../../workers/studies/away/needs';
import { nobodyLooks, type NobodyLooks } from '../../workers/studies/away/unnoticed';
import type { AwayTold } from '../../workers/desk/logQuestions';
import { dumpHolds, RIM } from '../../workers/studies/plan/fullDump';
import { patience, runsOf } from '../laws/size';
import { absence, bottled } from './anyAbsence';
import {
  bottleHarms,
  breachesInTruth,
  LEAST_L,
  reservoirLasts,
  standsEmpty,
  withBottle,
} from './awayInTruth';

/** A log without a line. */
const unread = { readings: [], answer: undefined, now: '2026-03-01T18:00' };

/** An absence takes a second: at full size five hundred, else a handful. */
const sized = runsOf(500, 0.05);
/** Of these one in so many has its failures run, too. */
const FAILURES_EVERY = 6;

/** What may fail is said in whole sentences, and a sitter has eyes and dry hands, and no kit. */
function expectSights(asked: AwayTold, looks: NobodyLooks): void {
  expect(looks.failures.length).toBeGreaterThan(3);
  for (const text of [
    ...looks.failures.map(failureText),
    worstSentence(looks, asked.away.provided.scenario),
  ]) {
    expect(text).not.toMatch(/NaN|undefined|Infinity|[^\d]-\d/);
  }
  const sights = sightsOf(asked, looks);
  expect(sights.map(({ id }) => id).slice(0, 3)).toEqual(['floor', 'dark', 'still']);
  for (const { sees, act, call } of sights) {
    expect(`${sees} ${act} ${call}`).not.toMatch(
      /NaN|undefined|Infinity|[Tt]est|[Mm]easure|alkalinity|pH|salinity/,
    );
    expect(call).toMatch(/the keeper/);
    // A sitter is told how much of what.
    expect(`${sees} ${act}`).not.toMatch(/more than [\d.]+ (?!m?L\b)/);
  }
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
        const { headline, beside, more } = awaySentences(asked, unread);
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
          if (leaveL > 0) expect(said).toContain(filled(leaveL));
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
        const lasts = (litresL: number) => reservoirLasts(found, now, days, litresL);
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
          expectSights(asked, looks);
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
