import fc from 'fast-check';
import { fieldAt, pathText, type FieldPath } from '../../shared/scenario/fields';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario } from '../../shared/scenario/schema';

/** Narrower than the schema allows, so that a run stays quick: three days, and few pump cycles. */
const narrower: Record<string, readonly [number, number]> = {
  days: [0.05, 3],
  'tank.volumeL': [20, 1500],
  'corals.useDkhPerDay': [0, 8],
  'gas.kLaPerH': [0, 10],
  'evaporation.litresPerDay': [0, 12],
  'topOff.deadBandL': [0.1, 4],
  'topOff.refillEveryDays': [0, 4],
  'waterChanges.everyDays': [0.5, 4],
  'additions[0].grams': [0, 60],
  'dosers[0].mlPerDay': [0, 400],
  'temperaturePlan[0].day': [0, 4],
  'faults[0].pump': [1, 4],
};
/** Lists stay short; rooms with a profile have all 24 hours. */
const LONGEST_LIST = 3;
const STEPS = 240;
const roomByHour = fc
  .array(fc.double({ min: 300, max: 3000, noNaN: true }), { minLength: 24, maxLength: 24 })
  .chain((hours) => fc.constantFrom(hours, []));

const fixed: Record<string, unknown> = {
  type: 'paper-reef/scenario',
  version: 4,
  // Expressions have a property of their own (tests/units).
  'evaporation.factor': '1',
  'room.co2Factor': '1',
};
type Any = fc.Arbitrary<unknown>;

const isBand = ([part, id]: FieldPath) => part === 'limits' && /Low|High/.test(String(id));

/** Low limits from the lower half of their range, high ones from the upper. */
function halfOf(path: FieldPath): readonly [number, number] {
  const { min, max, step } = fieldAt(path)!.quantity!;
  const middle = (min + max) / 2;
  return /Low/.test(String(path[1])) ? [min, middle - step] : [middle, max];
}

function anyNumber(path: FieldPath): Any {
  const { slider, min, max } = fieldAt(path)!.quantity!;
  const usual = isBand(path) ? halfOf(path) : slider;
  const [low, high] = narrower[pathText(path)] ?? [
    Math.max(min, usual[0]),
    Math.min(max, usual[1]),
  ];
  // Steps as a keeper might type them, ends included.
  return fc.integer({ min: 0, max: STEPS }).map((step) => low + ((high - low) * step) / STEPS);
}

/** Any value that the schema admits at a path, found from the schema's own description. */
export function anyAt(path: FieldPath): Any {
  const field = fieldAt(path);
  const name = pathText(path);
  if (name in fixed) return fc.constant(fixed[name]);
  if (name === 'room.co2PpmByHour') return roomByHour;
  if (!field) throw new RangeError(`the schema has no field at ${name}`);
  if (field.quantity) return anyNumber(path);
  switch (field.kind) {
    case 'strict_object':
      return fc.record(Object.fromEntries(field.keys.map((key) => [key, anyAt([...path, key])])));
    case 'array':
      return fc.array(anyAt([...path, 0]), { maxLength: LONGEST_LIST });
    case 'picklist':
      return fc.constantFrom(...field.options);
    case 'string':
      return fc.string({ maxLength: 30 });
    default:
      throw new RangeError(`${name} is of a kind that anyScenario does not know: ${field.kind}`);
  }
}

/** A moment within the trial, by spreading the day's hours over it. */
function inTrial({ hour }: { hour: number }, { days, start }: Scenario) {
  const clock = start.clockHour + (hour / 24) * days * 24;
  return { day: 1 + Math.floor(clock / 24), hour: Math.min(23.99, clock % 24) };
}

/** What single fields cannot know of each other: moments in the trial, sensors that fit, water that lasts. */
function reconciled(raw: Scenario): Scenario {
  const { days, tank, topOff, evaporation } = raw;
  const hasItsPump = ({ kind, pump }: Scenario['faults'][number]) =>
    !kind.startsWith('doser') || pump <= raw.dosers.length;
  // A tank that dries out is refused; a reservoir may be empty for all of the trial.
  const mostLost = (tank.volumeL * 0.4) / Math.max(1, days);
  return {
    ...raw,
    additions: raw.additions.map((addition) => ({ ...addition, ...inTrial(addition, raw) })),
    faults: raw.faults.map((fault) => ({ ...fault, ...inTrial(fault, raw) })).filter(hasItsPump),
    responses: raw.responses.map((response) => ({ ...response, ...inTrial(response, raw) })),
    topOff: { ...topOff, deadBandL: Math.min(topOff.deadBandL, tank.volumeL * 0.1) },
    evaporation: { ...evaporation, litresPerDay: Math.min(evaporation.litresPerDay, mostLost) },
  };
}

/** Any tank and plan that a keeper could type, every field of the schema included. */
export const anyScenario: fc.Arbitrary<Scenario> = anyAt([]).map((raw) =>
  scenarioOf(reconciled(raw as Scenario)),
);
