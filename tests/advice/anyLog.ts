import fc from 'fast-check';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { anyTank } from './anyPlan';

/** A log, the plan its tank is said to run by, and what is wanted: nothing need fit together. */
export interface AnyLog {
  readonly plan: Scenario;
  readonly readings: readonly Reading[];
  readonly targetDkh: number;
}

const FIRST_H = 20_454 * 24;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const to = (digits: number, value: number) => Number(value.toFixed(digits));

/** The tank with nothing, with limewater or with a pair of pumps. */
function dosed(tank: Scenario, carrier: string, share: number): Scenario {
  if (carrier === 'limewater') {
    const gramsPerL = to(2, 1.5 * share);
    return { ...tank, topOff: { ...tank.topOff, additive: 'calciumHydroxide', gramsPerL } };
  }
  if (carrier !== 'pumps') return tank;
  const wanted = tank.corals.useDkhPerDay * share * 1.5;
  const ml = gramsForDkh('sodiumCarbonate', wanted, tank.tank.volumeL) * 10;
  return { ...tank, dosers: twoPart('sodiumCarbonate', to(1, ml), tank) };
}

/** One to sixty readings over up to sixty days, at any slope, with slips and doses by hand among them. */
export const anyLog: fc.Arbitrary<AnyLog> = fc
  .record({
    tank: anyTank,
    carrier: fc.constantFrom('none', 'limewater', 'pumps'),
    share: between(0, 1),
    count: fc.integer({ min: 1, max: 60 }),
    days: between(0.5, 60),
    slope: between(-0.6, 0.2),
    firstDkh: between(5, 12.5),
    noise: fc.array(between(-1, 1), { minLength: 60, maxLength: 60 }),
    sigma: between(0.02, 0.4),
    slip: fc.option(fc.record({ at: fc.integer({ min: 0, max: 59 }), by: between(-4, 4) })),
    byHand: fc.option(fc.record({ every: fc.integer({ min: 1, max: 7 }), dkh: between(0.1, 0.8) })),
    aim: between(0.1, 0.9),
  })
  .map((log) => {
    const plan = dosed(log.tank, log.carrier, log.share);
    const times = Array.from({ length: log.count }, (_, i) =>
      Math.round((i * log.days * 24) / Math.max(1, log.count - 1)),
    );
    const tests = [...new Set(times)].map((timeH, i): Reading => {
      const slip = log.slip?.at === i ? log.slip.by : 0;
      const dkh = log.firstDkh + (log.slope * timeH) / 24 + log.sigma * log.noise[i]! + slip;
      return {
        at: localTimeOf(FIRST_H + 9 + timeH),
        alkalinityDkh: to(1, Math.max(3, Math.min(15, dkh))),
      };
    });
    const grams = gramsForDkh('sodiumBicarbonate', log.byHand?.dkh ?? 0, plan.tank.volumeL);
    const poured = log.byHand ? Math.floor(log.days / log.byHand.every) : 0;
    const doses = Array.from({ length: poured }, (_, i): Reading => ({
      at: localTimeOf(FIRST_H + 20 + i * log.byHand!.every * 24),
      ...{ additive: 'sodiumBicarbonate', grams: Number(grams.toPrecision(3)) },
    }));
    const { alkalinityLowDkh: low, alkalinityHighDkh: high } = plan.limits;
    return {
      plan,
      readings: [...tests, ...doses].toSorted((a, b) => (a.at < b.at ? -1 : 1)),
      targetDkh: to(1, low + log.aim * (high - low)),
    };
  });
