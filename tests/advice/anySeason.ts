import fc from 'fast-check';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import { limewaterDkhFromGPerL } from '../../shared/seawater/limewater';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';

export type Carrier = 'pair' | 'limewater' | 'none';

/** A tank in truth, and as its keeper's kits read it. */
export interface AnySeason {
  readonly carrier: Carrier;
  /** What the pair or the limewater brings, dKH a day. */
  readonly broughtDkhPerDay: number;
  readonly truth: Scenario;
  readonly known: Scenario;
  readonly giveOrTakeDkhPerDay: number;
}

/** Even over its range: the ends are no likelier than the rest. */
const evenly = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: 0, max: 10_000 })).map((n) => min + ((max - min) * n) / 10_000);

function dosed(tank: Scenario, carrier: Carrier, dkhPerDay: number): Scenario {
  const { volumeL } = tank.tank;
  if (carrier === 'none') return tank;
  if (carrier === 'limewater') {
    const gramsPerL =
      (dkhPerDay * volumeL) / tank.evaporation.litresPerDay / limewaterDkhFromGPerL(1);
    return {
      ...tank,
      topOff: {
        ...tank.topOff,
        additive: 'calciumHydroxide',
        gramsPerL: Number(Math.min(1.5, gramsPerL).toFixed(2)),
      },
    };
  }
  const ml =
    (gramsForDkh('sodiumCarbonate', dkhPerDay, volumeL) / STOCK_G_PER_L.sodiumCarbonate) * 1000;
  return { ...tank, dosers: twoPart('sodiumCarbonate', Number(ml.toPrecision(3)), tank) };
}

/** The whole range that a keeper can type; all else as a tank begins that nobody has touched. */
export const anySeason: fc.Arbitrary<AnySeason> = fc
  .record({
    carrier: fc.constantFrom<Carrier>('pair', 'pair', 'limewater', 'none'),
    volumeL: evenly(20, 2000),
    useDkhPerDay: evenly(0, 4),
    // Half of them hold alkalinity nearly; whoever asks of a season has turned that before.
    covers: fc.oneof(evenly(0.97, 1.03), evenly(0.7, 1.2)),
    calciumMgPerL: evenly(330, 520),
    magnesiumMgPerL: evenly(1050, 1550),
    salinityPractical: evenly(32.5, 37.5),
    percent: fc.constantFrom(0, 5, 10, 20, 30),
    bagCalcium: evenly(380, 480),
    bagMagnesium: evenly(1150, 1450),
    mixedTo: evenly(33, 36),
    growthPercentPerDay: fc.constantFrom(0, 0.1, 0.3),
    evaporationShare: evenly(0.005, 0.03),
    clockHour: fc.integer({ min: 0, max: 23 }),
    calciumError: evenly(-15, 15),
    magnesiumError: evenly(-40, 40),
    salinityError: evenly(-0.4, 0.4),
    useError: evenly(-1, 1),
  })
  .map((t): AnySeason => {
    const bare = scenarioOf({
      title: 'any tank of a season',
      days: 60,
      tank: {
        ...{ volumeL: t.volumeL, alkalinityDkh: 8.5, calciumMgPerL: t.calciumMgPerL },
        ...{ magnesiumMgPerL: t.magnesiumMgPerL, salinityPractical: t.salinityPractical },
      },
      start: { clockHour: t.clockHour },
      corals: { useDkhPerDay: t.useDkhPerDay, growthPercentPerDay: t.growthPercentPerDay },
      evaporation: { litresPerDay: t.evaporationShare * t.volumeL },
      waterChanges: {
        ...{ percent: t.percent, salinityPractical: t.mixedTo },
        salt: { calciumMgPerL: t.bagCalcium, magnesiumMgPerL: t.bagMagnesium },
      },
      topOff: {
        reservoirL: Math.max(1, t.evaporationShare * t.volumeL * 3),
        pumpLPerH: Math.max(0.5, t.volumeL * 0.01),
        deadBandL: Math.max(0.05, t.volumeL * 0.002),
      },
      outflows: { spareL: Math.max(1, t.volumeL * 0.1) },
    });
    const broughtDkhPerDay = t.useDkhPerDay * t.covers;
    const truth = dosed(bare, t.carrier, broughtDkhPerDay);
    const giveOrTakeDkhPerDay = 0.05 + 0.05 * t.useDkhPerDay;
    const { tank, corals } = truth;
    const read = (value: number, error: number, digits: number) =>
      Number((value + error).toFixed(digits));
    return {
      ...{ carrier: t.carrier, broughtDkhPerDay, truth, giveOrTakeDkhPerDay },
      known: {
        ...truth,
        tank: {
          ...tank,
          calciumMgPerL: read(tank.calciumMgPerL, t.calciumError, 0),
          magnesiumMgPerL: read(tank.magnesiumMgPerL, t.magnesiumError, 0),
          salinityPractical: read(tank.salinityPractical, t.salinityError, 1),
        },
        corals: {
          ...corals,
          useDkhPerDay: Math.max(0, t.useDkhPerDay + t.useError * giveOrTakeDkhPerDay),
        },
      },
    };
  });
