import fc from 'fast-check';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import { limewaterDkhFromGPerL } from '../../shared/seawater/limewater';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';

export type Carrier = 'limewater' | 'pair' | 'bicarbonate' | 'soda';

/** A tank in truth, and what its keeper knows of it. */
export interface AnyTurn {
  readonly carrier: Carrier;
  /** As it is: its level, and what its corals take. */
  readonly truth: Scenario;
  /** As it was read and fitted. */
  readonly known: Scenario;
  readonly targetDkh: number;
  readonly giveOrTakeDkhPerDay: number;
}

/** Even over its range: the ends are no likelier than the rest. */
const evenly = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: 0, max: 10_000 })).map((n) => min + ((max - min) * n) / 10_000);
/** As good as a standard normal: twelve even draws less six. */
const normal = fc
  .tuple(...Array.from({ length: 12 }, () => evenly(0, 1)))
  .map((draws) => draws.reduce((sum, one) => sum + one, -6));

/** What once covered so much use: the plan that runs. */
function dosed(tank: Scenario, carrier: Carrier, coveredDkhPerDay: number): Scenario {
  const { volumeL } = tank.tank;
  if (carrier === 'limewater') {
    const gramsPerL =
      (coveredDkhPerDay * volumeL) / tank.evaporation.litresPerDay / limewaterDkhFromGPerL(1);
    return {
      ...tank,
      topOff: {
        ...tank.topOff,
        additive: 'calciumHydroxide',
        gramsPerL: Number(Math.min(1.6, gramsPerL).toFixed(2)),
      },
    };
  }
  const powder = carrier === 'bicarbonate' ? 'sodiumBicarbonate' : 'sodiumCarbonate';
  const ml = (gramsForDkh(powder, coveredDkhPerDay, volumeL) / STOCK_G_PER_L[powder]) * 1000;
  const pair = twoPart(powder, Number(ml.toPrecision(3)), tank);
  return { ...tank, dosers: carrier === 'pair' ? pair : pair.slice(0, 1) };
}

/** The whole range that a keeper can type, and a use that has changed since the plan was made. */
export const anyTurn: fc.Arbitrary<AnyTurn> = fc
  .record({
    carrier: fc.constantFrom<Carrier>('limewater', 'pair', 'bicarbonate', 'soda'),
    volumeL: evenly(40, 2000),
    useDkhPerDay: evenly(0.2, 4),
    changed: evenly(-0.4, 0.6),
    evaporationShare: evenly(0.005, 0.03),
    offDkh: evenly(-2.5, 2.5),
    lowDkh: evenly(6.5, 8),
    bandDkh: evenly(2.5, 5),
    aim: evenly(0.3, 0.7),
    limitDkhPerDay: evenly(0.5, 1.4),
    percent: fc.constantFrom(0, 0, 5, 10, 20),
    saltDkh: evenly(7, 12),
    co2Ppm: evenly(400, 1200),
    kLaPerH: evenly(0.5, 4),
    growthPercentPerDay: fc.constantFrom(0, 0.1, 0.3),
    clockHour: fc.integer({ min: 0, max: 23 }),
    standardError: evenly(0.01, 0.08),
    useError: normal,
    levelError: normal,
  })
  .map((t): AnyTurn => {
    const targetDkh = Number((t.lowDkh + t.aim * t.bandDkh).toFixed(1));
    const level = Math.max(4, targetDkh + t.offDkh);
    const bare = scenarioOf({
      title: 'any tank to be turned',
      days: 28,
      tank: { volumeL: t.volumeL, alkalinityDkh: level },
      start: { clockHour: t.clockHour },
      corals: { useDkhPerDay: t.useDkhPerDay, growthPercentPerDay: t.growthPercentPerDay },
      evaporation: { litresPerDay: t.evaporationShare * t.volumeL },
      room: { co2Ppm: t.co2Ppm },
      gas: { kLaPerH: t.kLaPerH },
      waterChanges: { percent: t.percent, salt: { alkalinityDkh: t.saltDkh } },
      topOff: {
        reservoirL: Math.max(1, t.evaporationShare * t.volumeL * 3),
        refillEveryDays: 2,
        pumpLPerH: Math.max(0.5, t.volumeL * 0.01),
        deadBandL: Math.max(0.05, t.volumeL * 0.002),
      },
      outflows: { spareL: Math.max(1, t.volumeL * 0.1) },
      limits: {
        alkalinityLowDkh: t.lowDkh,
        alkalinityHighDkh: t.lowDkh + t.bandDkh,
        alkalinityChangeDkhPerDay: t.limitDkhPerDay,
      },
    });
    const truth = dosed(bare, t.carrier, t.useDkhPerDay / (1 + t.changed));
    const useError = t.standardError * t.useError;
    return {
      ...{ carrier: t.carrier, truth, targetDkh, giveOrTakeDkhPerDay: 2 * t.standardError },
      known: {
        ...truth,
        tank: { ...truth.tank, alkalinityDkh: Number((level + 0.05 * t.levelError).toFixed(2)) },
        corals: { ...truth.corals, useDkhPerDay: Math.max(0, t.useDkhPerDay + useError) },
      },
    };
  });
