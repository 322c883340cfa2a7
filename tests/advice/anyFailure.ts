import fc from 'fast-check';
import { quantityAt } from '../../shared/scenario/fields';
import { faultIds } from '../../shared/scenario/faults';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { anyTank } from './anyPlan';

type Fault = Scenario['faults'][number];

/** As much as a keeper may type, and now and then the usual value untouched. */
const typed = (field: keyof Fault & string) => {
  const { min, max } = quantityAt(['faults', 0, field]).quantity;
  return fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined, freq: 3 });
};

const fields = [
  ...(['sensorLowL', 'litresPerH', 'times', 'newWaterSalinity', 'newWaterDkh'] as const),
  ...(['endTempC', 'degreesPerH', 'coolingHours', 'gasPercent', 'co2Ppm', 'riseHours'] as const),
  ...(['grams'] as const),
];

/** Something of these kinds that breaks, with whatever may be typed of it. */
export const anyFaultOf = (kinds: readonly Fault['kind'][]): fc.Arbitrary<Fault> =>
  fc
    .record({
      kind: fc.constantFrom(...kinds),
      hour: fc.integer({ min: 0, max: 23 }),
      hours: fc.double({ min: 0.5, max: 40, noNaN: true }),
      cooling: fc.constantFrom('none', 'estimated', 'own'),
      own: fc.record(Object.fromEntries(fields.map((field) => [field, typed(field)]))),
    })
    .map(({ kind, hour, hours, cooling, own }): Fault => {
      const given = Object.entries(own).filter(([, value]) => value !== undefined);
      return newFault(kind, {
        ...{ day: 1, hour, endsAfterH: hours, cooling: cooling as Fault['cooling'] },
        ...Object.fromEntries(given),
        // More than a kilogram by hand is no slip.
        ...(own.grams === undefined ? {} : { grams: Math.min(1000, Number(own.grams)) }),
      });
    });

/** A tank with limewater and a dosing pump, in which one thing breaks, or two. */
export const anyFailure = fc
  .record({
    tank: anyTank,
    lime: fc.option(fc.double({ min: 0.2, max: 1.5, noNaN: true }), { nil: undefined }),
    dosed: fc.boolean(),
    stocking: fc.constantFrom('few' as const, 'usual' as const, 'crowded' as const),
    faults: fc.array(anyFaultOf(faultIds), { minLength: 1, maxLength: 2 }),
  })
  .map(({ tank, lime, dosed, stocking, faults }): Scenario => {
    const soda = { additive: 'sodiumCarbonate' as const, gramsPerL: 60 };
    const pump = { name: 'soda', recipe: [soda], mlPerDay: tank.tank.volumeL * 0.3 };
    const own =
      lime === undefined ? {} : { additive: 'calciumHydroxide' as const, gramsPerL: lime };
    return scenarioOf({
      ...tank,
      oxygen: { ...tank.oxygen, stocking },
      topOff: { ...tank.topOff, ...own },
      dosers: dosed || faults.some(({ kind }) => kind.startsWith('doser')) ? [pump] : [],
      waterChanges: { ...tank.waterChanges, percent: 10, everyDays: 1 },
      faults,
    });
  });
