import type { Twins } from './twins';
import type { Variant } from './variants';

/** Where no reading can tell, the wider interval or a sentence stands in. */
const UNTOLD: readonly Variant[] = [
  'unmarked bottle',
  'volume 15 % off',
  'evaporation 30 % off',
  'pump off, unlogged',
  'use steps up',
];
const LEAST_HELD = 0.92;
const LEAST_IN_FAN = 0.9;
/** The median of fewer twins says little of who is nearer: those are held together (`together`). */
const ENOUGH_TWINS = 60;

/** What is wrong with the twins of a variant; nothing when all is as promised. */
export function twinMisses(found: Twins): string[] {
  const { variant, count, stuck, held, heldOrSaid, inFanFirstWeek, inFanSecondWeek } = found;
  // How far a share of so many twins strays by chance: three standard errors.
  const chance = (share: number) => 3 * Math.sqrt((share * (1 - share)) / count);
  // Nor does a straight line that wins in a handful of twins win in truth.
  const near = found.lineMedianErrorDkhPerDay * (1 + 1.5 / Math.sqrt(count));
  const told = UNTOLD.includes(variant) ? heldOrSaid : held;
  const inFan = UNTOLD.includes(variant) ? 1 : Math.min(inFanFirstWeek, inFanSecondWeek);
  return [
    ...(stuck > 0 ? [`${stuck} were never fitted`] : []),
    ...(told < LEAST_HELD - chance(LEAST_HELD) ? [`intervals held ${told}`] : []),
    ...(inFan < LEAST_IN_FAN - chance(LEAST_IN_FAN) ? [`the fan held ${inFan}`] : []),
    ...(count >= ENOUGH_TWINS && found.medianErrorDkhPerDay > near
      ? [`off by ${found.medianErrorDkhPerDay}, a line by ${found.lineMedianErrorDkhPerDay}`]
      : []),
  ].map((what) => `twins, ${variant}: ${what}`);
}
