import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualTargets } from '../../shared/recipe/seasonTargets';
import { lineOf } from '../../shared/verdict/lineResult';
import { usualOptions } from '../../workers/engine/simulation';
import { firstAsked, heldSalinity } from '../../workers/studies/season/firstAsked';
import { firstDays } from '../../workers/studies/season/firstDays';
import { metals } from '../../workers/studies/season/metals';
import { daily, SeasonTank } from '../../workers/studies/season/seasonTank';
import { weeklyHold } from '../../workers/studies/season/weekly';
import { SEASON_DAYS } from '../../workers/studies/season/weeks';
import { widestDay, type Replay } from '../../workers/studies/turn/replay';
import { patience, runsOf } from '../laws/size';
import { anySeason, type AnySeason } from './anySeason';
import { endOf, endsAtPpt, firstByHand, mixedByHand, replayIn, withMixed } from './seasonInTruth';

const options = { ...usualOptions, toleranceUmolPerKg: 0.5 };
/** A tank takes some seconds. */
const sized = runsOf(30);
/** However few are drawn, one of them is a pair whose salt the weekly changes have to carry away. */
const [aPair] = fc.sample(
  anySeason.filter(
    ({ carrier, truth: { corals, waterChanges } }) =>
      carrier === 'pair' && waterChanges.percent === 10 && corals.useDkhPerDay > 2,
  ),
  { numRuns: 1, seed: 1 },
);

/** Beside what the reading itself was off, mg/L. */
const NEAR_MG_PER_L = { calcium: 8, magnesium: 12 } as const;
/** A line that is passed as it runs is passed no sooner, h: the study's 48, and a day of the kits'. */
const SOONER_H = 72;
/** And salinity, ppt. */
const NEAR_PPT = 0.25;

const errorOf = ({ truth, known }: AnySeason) => ({
  calcium: known.tank.calciumMgPerL - truth.tank.calciumMgPerL,
  magnesium: known.tank.magnesiumMgPerL - truth.tank.magnesiumMgPerL,
  salinity: known.tank.salinityPractical - truth.tank.salinityPractical,
});

/** Lines that the replay passes in truth, and farther than the tank left alone. */
function breachesOf(any: AnySeason, replay: Replay, alone: Replay): string[] {
  const error = errorOf(any);
  const lines = replay.lines.flatMap(({ id, quantity, firstH, trouble, worst, limit }) => {
    if (firstH === undefined) return [];
    const goesOut = lineOf(alone.lines, id);
    const before = goesOut.worst;
    // What is passed as it runs, too, and no sooner, is none of the season's doing.
    const drifts = !(quantity in error) && goesOut.firstH !== undefined;
    if (drifts && goesOut.firstH! - firstH <= SOONER_H) return [];
    const past = trouble === 'above' ? worst - limit : limit - worst;
    const farther = trouble === 'above' ? worst - before : before - worst;
    const unread = quantity in error ? Math.abs(error[quantity as keyof typeof error]) : 0;
    const untold = (quantity === 'ph' ? 0.1 : 0.01 * limit) + unread;
    return past > untold && farther > untold ? [`${id} ${worst} (${before} alone)`] : [];
  });
  const columns = {
    calcium: 'calcium_mg_l',
    magnesium: 'magnesium_mg_l',
    salinity: 'salinity_ppt',
  } as const;
  const fast = (Object.keys(columns) as (keyof typeof columns)[]).flatMap((id) => {
    const widest = (one: Replay) => {
      const hourly = one.hourly(columns[id]);
      return widestDay(hourly, 0, hourly.length);
    };
    const allowed = Math.max(usualMostPerDay[id], widest(alone)) * 1.08;
    return widest(replay) > allowed ? [`${id} moves ${widest(replay)} in a day`] : [];
  });
  return [...lines, ...fast];
}

it(
  'what is added and changed keeps every limit in the tank’s true water, and comes nearer than hand arithmetic',
  () => {
    const ends: { own: number; byHand: number }[] = [];
    const salty: { own: number; byHand: number }[] = [];
    const breaches: string[] = [];
    const kinds: Record<string, number> = {};
    const took: number[] = [];
    const count = (kind: string) => (kinds[kind] = (kinds[kind] ?? 0) + 1);
    fc.assert(
      fc.property(anySeason, (any) => {
        const { known, truth, giveOrTakeDkhPerDay } = any;
        const begun = performance.now();
        const targets = usualTargets(known);
        const tank = new SeasonTank(known, giveOrTakeDkhPerDay, options);
        const first = firstDays(tank, firstAsked(tank, targets, usualMostPerDay));
        const weekly = weeklyHold(tank, first, targets, usualMostPerDay);
        took.push(performance.now() - begun);
        count(`first ${first.kind}`);
        count(`weekly ${weekly.kind}`);
        const error = errorOf(any);
        if (first.kind === 'first') {
          const { stretch, poured, days } = first;
          // What is told is what was run.
          for (const { additive, grams } of stretch.scenario.additions) {
            const told = Object.values(poured).find((one) => one.additive === additive);
            expect(grams).toBe(told?.gramsPerDay);
          }
          expect(days).toBeLessThanOrEqual(45);
          const own = replayIn(any, [stretch]);
          const alone = replayIn(any, [
            { scenario: { ...truth, additions: [] }, untilDay: stretch.untilDay },
          ]);
          breaches.push(...breachesOf(any, own, alone));
          const hand = replayIn(any, [firstByHand(any, first)]);
          for (const metal of metals.filter((one) => poured[one])) {
            const stands = (replay: Replay) =>
              endOf(replay, first, truth.start.clockHour, metal) + error[metal];
            const off = Math.abs(stands(own) - error[metal] - first.ends[metal]);
            const miss = off - Math.abs(error[metal]);
            if (miss > NEAR_MG_PER_L[metal]) breaches.push(`${metal} ends ${miss} off`);
            if (first.share < 1) continue;
            const [ownMiss, byHand] = [own, hand].map((one) =>
              Math.abs(stands(one) - targets[metal]),
            );
            ends.push({ own: ownMiss!, byHand: byHand! });
          }
        }
        if (weekly.kind === 'cannot') return;
        const own = replayIn(any, weekly.stretches);
        const { low, high } = tank.band('salinity');
        const from = weekly.stretches.length > 1 ? weekly.stretches[0]!.untilDay : 0;
        const unread = Math.abs(error.salinity) + NEAR_PPT;
        // What begins outside is on its way, and said to be: until it is to be inside.
        const planned = daily(tank.replay(weekly.stretches), 'salinity').slice(from);
        const isInside = (ppt: number, by: number) => ppt >= low - by && ppt <= high + by;
        const inside = planned.findIndex((ppt) => isInside(ppt, 0));
        // What comes no farther than near may be nearer at first than on its way.
        const near = planned.findLastIndex((ppt) => !isInside(ppt, NEAR_PPT)) + 1;
        const begins = inside < 0 ? near : inside;
        if (begins === planned.length) breaches.push(`salinity never inside, ${planned.at(-1)}`);
        const means = daily(own, 'salinity').slice(from + begins);
        const outside = means.filter((ppt) => !isInside(ppt, unread));
        if (outside.length > 0) breaches.push(`salinity ${outside[0]} for ${outside.length} days`);
        const { exchange } = weekly;
        const { waterChanges } = weekly.stretches.at(-1)!.scenario;
        if (exchange) expect(waterChanges.salinityPractical).toBe(exchange.salinityPractical);
        if (!exchange || weekly.kind !== 'turned') return;
        if (exchange.salinityPractical === known.waterChanges.salinityPractical) return;
        const aim = heldSalinity(tank);
        const hand = replayIn(any, withMixed(weekly.stretches, mixedByHand(any, weekly)));
        salty.push({
          own: Math.abs(endsAtPpt(own) - aim),
          byHand: Math.abs(endsAtPpt(hand) - aim),
        });
      }),
      { ...sized, examples: [[aPair!]] },
    );
    const of = (pairs: typeof ends) =>
      `${median(pairs, ({ own }) => own)?.toFixed(2)} (by hand ${median(pairs, ({ byHand }) => byHand)?.toFixed(2)}) of ${pairs.length}`;
    const ms = took.toSorted((a, b) => a - b);
    console.log(
      `${JSON.stringify(kinds)}; mg/L off ${of(ends)}; ppt off after ${SEASON_DAYS} days ${of(salty)}; ms p50 ${Math.round(median(ms)!)}, most ${Math.round(ms.at(-1)!)}`,
    );
    expect(breaches).toEqual([]);
    for (const pairs of [ends, salty]) {
      expect(pairs.length).toBeGreaterThan(0);
      expect(median(pairs, ({ own }) => own)).toBeLessThan(median(pairs, ({ byHand }) => byHand)!);
    }
  },
  patience * 4,
);
