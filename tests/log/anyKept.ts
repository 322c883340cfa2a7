import { randomLcg, randomNormal } from 'd3-random';
import fc from 'fast-check';
import { localTimeOf } from '../../shared/log/localTime';
import { inOrder, type Reading } from '../../shared/log/reading';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import { momentH } from '../../shared/scenario/clock';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { limewaterDkhFromGPerL } from '../../shared/seawater/limewater';
import { readColumn } from '../../shared/trace/trace';
import { toDecimals } from '../../shared/units/digits';
import { run } from '../../workers/engine/run';
import { AHEAD_DAYS, CLOCK_HOUR, evenly, START_H } from './testedDaily';

const EFFLUENT_DKH = 25;

/** How alkalinity is brought; by hand is bicarbonate every evening. */
export const carriers = ['none', 'limewater', 'pair', 'soda', 'hand', 'reactor'] as const;
type Carrier = (typeof carriers)[number];

const any = fc.record({
  carrier: fc.constantFrom<Carrier>(...carriers),
  volumeL: evenly(40, 2000),
  useDkhPerDay: evenly(0.1, 2.5),
  dosedShare: evenly(0.3, 1.3),
  startDkh: evenly(6.5, 11),
  everyDays: fc.constantFrom(1, 1, 2, 3, 5, 7),
  tests: fc.integer({ min: 4, max: 11 }),
  changePercent: fc.constantFrom(0, 0, 10, 15, 25),
  saltDkh: evenly(7, 12),
  growthPercentPerDay: fc.constantFrom(0, 0, 0.2, 0.4),
  omegaLaw: fc.constantFrom('gentle' as const, 'gentle' as const, 'proportional' as const),
  sigmaDkh: fc.constantFrom(0.05, 0.1, 0.2),
  correctedDkh: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, evenly(0.5, 2)),
  kLaPerH: evenly(0.5, 4),
  co2Ppm: evenly(400, 1000),
  evaporationShare: evenly(0.005, 0.025),
  noise: evenly(0, 1),
});
type Any = typeof any extends fc.Arbitrary<infer T> ? T : never;

/** A tank of a keeper who notes all that is done: what is typed of it, its log, and its water from then on. */
export interface Kept {
  readonly carrier: Carrier;
  readonly plan: Scenario;
  readonly log: readonly Reading[];
  /** The tests alone, with their days. */
  readonly days: readonly number[];
  readonly values: readonly number[];
  /** True alkalinity as long after the last test as a forecast is asked for. */
  readonly thenDkh: number;
}

function dosing(tank: Scenario, { carrier, volumeL, useDkhPerDay, dosedShare, startDkh }: Any) {
  const dkhPerDay = useDkhPerDay * dosedShare;
  const grams = gramsForDkh('sodiumCarbonate', dkhPerDay, volumeL);
  const ml = Number(((1000 * grams) / STOCK_G_PER_L.sodiumCarbonate).toPrecision(3));
  const pair = twoPart('sodiumCarbonate', ml, tank);
  const { topOff, calciumReactor, evaporation } = tank;
  const limeGPerL = (dkhPerDay * volumeL) / evaporation.litresPerDay / limewaterDkhFromGPerL(1);
  const gramsPerL = toDecimals(Math.min(1.5, limeGPerL), 2);
  const dripLPerH = (dkhPerDay * volumeL) / 24 / (EFFLUENT_DKH - startDkh);
  const by: Record<Carrier, Partial<Scenario>> = {
    none: {},
    hand: {},
    pair: { dosers: pair },
    soda: { dosers: pair.slice(0, 1) },
    limewater: { topOff: { ...topOff, additive: 'calciumHydroxide', gramsPerL } },
    reactor: { calciumReactor: { ...calciumReactor, effluentDkh: EFFLUENT_DKH, dripLPerH } },
  };
  return { ...tank, ...by[carrier] };
}

/** Bicarbonate by the evening where that is how it is dosed, and one correction on the way. */
function poured({ carrier, correctedDkh, ...drawn }: Any, days: number): Scenario['additions'] {
  const grams = (dkh: number) =>
    Number(gramsForDkh('sodiumBicarbonate', dkh, drawn.volumeL).toPrecision(3));
  const one = (day: number, hour: number, dkh: number) =>
    ({ day, hour, additive: 'sodiumBicarbonate', grams: grams(dkh) }) as const;
  const daily = drawn.useDkhPerDay * drawn.dosedShare;
  return [
    ...(carrier === 'hand'
      ? Array.from({ length: days + AHEAD_DAYS }, (_, i) => one(i + 1, 20, daily))
      : []),
    ...(correctedDkh > 0 ? [one(Math.max(1, Math.floor(days / 2)), 15, correctedDkh)] : []),
  ];
}

function keptOf(drawn: Any): Kept {
  const { volumeL, tests, everyDays, changePercent, sigmaDkh } = drawn;
  const days = everyDays * (tests - 1);
  const tank = scenarioOf({
    days: days + AHEAD_DAYS,
    tank: { volumeL, alkalinityDkh: drawn.startDkh },
    start: { clockHour: CLOCK_HOUR },
    room: { co2Ppm: drawn.co2Ppm },
    gas: { kLaPerH: drawn.kLaPerH },
    evaporation: { litresPerDay: drawn.evaporationShare * volumeL },
    topOff: {
      reservoirL: 0.1 * volumeL,
      refillEveryDays: 2,
      pumpLPerH: 0.02 * volumeL,
      deadBandL: 0.002 * volumeL,
    },
    waterChanges: { percent: changePercent, everyDays: 7, salt: { alkalinityDkh: drawn.saltDkh } },
  });
  const plan = dosing(tank, drawn);
  const additions = poured(drawn, days);
  const { useDkhPerDay, growthPercentPerDay, omegaLaw } = drawn;
  const corals = { ...plan.corals, useDkhPerDay, growthPercentPerDay, omegaLaw };
  const dkh = readColumn(run({ ...plan, corals, additions }).trace, 'alkalinity_dkh');
  const normal = randomNormal.source(randomLcg(drawn.noise))(0, sigmaDkh);
  const testDays = Array.from({ length: tests }, (_, i) => i * everyDays);
  const values = testDays.map((day) => toDecimals(dkh[day * 24]! + normal(), 1));
  const at = (timeH: number) => localTimeOf(START_H + timeH);
  const happened = (timeH: number) => timeH >= 0 && timeH <= days * 24;
  const changes = Array.from({ length: Math.ceil(days / 7) + 1 }, (_, i) =>
    momentH({ day: 7 * (i + 1), hour: plan.waterChanges.hour }, CLOCK_HOUR),
  );
  const log = [
    ...values.map((alkalinityDkh, i): Reading => ({ at: at(testDays[i]! * 24), alkalinityDkh })),
    ...additions.flatMap(({ additive, grams, ...when }): Reading[] => {
      const timeH = momentH(when, CLOCK_HOUR);
      return happened(timeH) ? [{ at: at(timeH), additive, grams }] : [];
    }),
    ...changes
      .filter((timeH) => changePercent > 0 && happened(timeH))
      .map((timeH): Reading => ({ at: at(timeH), waterChangePercent: changePercent })),
  ];
  const thenDkh = dkh[(days + AHEAD_DAYS) * 24]!;
  return { carrier: drawn.carrier, plan, log: inOrder(log), days: testDays, values, thenDkh };
}

const MOST_DKH = 15;
const LEAST_DKH = 4.5;

/** Over the range that a keeper can type, and read in a tank that lives. */
export const anyKept: fc.Arbitrary<Kept> = any
  .map(keptOf)
  .filter(({ values }) => Math.min(...values) > LEAST_DKH && Math.max(...values) < MOST_DKH);
