import { bottleDumps } from '../../../shared/recipe/bottleDump';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { alkalinityMeqPerG } from '../../../shared/species/additives';
import { settle } from '../../engine/settle';
import { usualOptions } from '../../engine/simulation';
import { bottleDumpAt, dumpAt, excess, withLever, worstHour } from '../drill/dump';

/** What a stuck pump may not pass: the pH that harms, and the keeper's highest alkalinity. */
const HARM: readonly string[] = ['phHarm', 'alkalinityHigh'];
/** And where more runs onto the floor. */
export const RIM: readonly string[] = ['overflow'];
/** A reservoir is filled to the half litre, or to a twentieth where it is small. */
const fillText = (litres: number) =>
  litres >= 5 ? Math.floor(litres * 2) / 2 : Math.floor(litres * 20) / 20;
const TRIES = 7;
/** Of what does harm after all so much is tried next. */
const LESS = 0.75;

/** Water runs over the rim at any hour alike. */
const hourFor = (scenario: Scenario, lines: readonly string[], dump = dumpAt): number =>
  lines === RIM ? 0 : worstHour(scenario, lines, dump);

/** Whether the whole reservoir, going in at the worst hour, stays inside. */
export function dumpHolds(scenario: Scenario, lines = HARM): boolean {
  const hour = hourFor(scenario, lines);
  return excess(dumpAt(scenario, hour), lines, usualOptions) <= 0;
}

/** The most of something, searched from all of it down, that still holds. */
function mostThat(holds: (value: number) => boolean, set: number): number {
  if (holds(set)) return set;
  let [low, high] = [0, set];
  for (let i = 0; i < TRIES; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The most of something in the top-off with which a full dump stays inside at every hour, rounded down
 * as it is told. It is tried as it is told: where a tank's day has no rest, less of it may begin at
 * another pH and do more harm.
 */
function most(
  scenario: Scenario,
  lever: 'reservoirL' | 'gramsPerL',
  told: (value: number) => number,
  lines = HARM,
): number {
  const value = atItsHour(scenario, lever, lines);
  if (value === scenario.topOff[lever]) return value;
  let left = told(value);
  while (left > 0 && !dumpHolds(withLever(scenario, lever, left), lines)) left = told(left * LESS);
  return left;
}

/** The most of it that holds at the hour at which that much is worst. */
function atItsHour(
  scenario: Scenario,
  lever: 'reservoirL' | 'gramsPerL',
  lines: readonly string[],
): number {
  const set = (value: number): Scenario => withLever(scenario, lever, value);
  let value = scenario.topOff[lever];
  let triedHour: number | undefined;
  for (;;) {
    // Less of it is over sooner, and may be worst at another hour.
    const hour = hourFor(set(value), lines);
    if (hour === triedHour || value === 0) return value;
    const options = { ...usualOptions, near: settle(dumpAt(set(value), hour), usualOptions) };
    const holds = (tried: number) => excess(dumpAt(set(tried), hour), lines, options) <= 0;
    const found = mostThat(holds, value);
    if (found === value) return value;
    [value, triedHour] = [found, hour];
  }
}

/** The most that may stand in the reservoir so that a full dump stays inside, L. */
export function fullestReservoirL(scenario: Scenario, lines = HARM): number {
  return most(scenario, 'reservoirL', fillText, lines);
}

/** The strongest mix, g/L, of which a full dump of the whole reservoir stays inside. */
export function strongestMixGPerL(scenario: Scenario): number {
  return most(scenario, 'gramsPerL', (gramsPerL) => Math.floor(gramsPerL * 100) / 100);
}

/** What brings no alkalinity is not to blame for one that is outside already. */
const linesFor = ({ recipe }: Scenario['dosers'][number]): readonly string[] =>
  recipe.some(({ additive }) => alkalinityMeqPerG(additive) !== 0) ? [...HARM, ...RIM] : RIM;

function bottleHolds(scenario: Scenario, pump: number): boolean {
  const lines = linesFor(scenario.dosers[pump]!);
  const at = (own: Scenario, hour: number) => bottleDumpAt(own, hour, pump);
  return excess(at(scenario, hourFor(scenario, lines, at)), lines) <= 0;
}

/**
 * The most that may stand in a pump's bottle so that all of it at once stays inside, L, to the mL:
 * what the arithmetic of a stuck pump allows, less where the engine passes a line with that. Never
 * less than the smallest bottle.
 */
export function fullestBottleL(scenario: Scenario, pump: number): number {
  const { stockL } = scenario.dosers[pump]!;
  const told = bottleDumps(scenario).find((one) => one.pump === pump);
  const least = quantityAt(['dosers', 0, 'stockL']).quantity.min;
  const withBottle = (litres: number): Scenario => ({
    ...scenario,
    dosers: scenario.dosers.map((one, i) => (i === pump ? { ...one, stockL: litres } : one)),
  });
  const holds = (litres: number) => litres <= least || bottleHolds(withBottle(litres), pump);
  const litres = mostThat(holds, Math.min(stockL, told?.fillL ?? Infinity));
  return litres === stockL ? litres : Math.max(least, Math.floor(litres * 1000) / 1000);
}
