import type { Scenario } from '../scenario/schema';
import { breathedMmolPerLPerDay } from './unseenRespiration';

/** How far off what is breathed may be: by a word for stocking half (the words lie a factor of two
 * apart), as somebody measured it a sixth (common practice). */
const BY_WORD = 0.5;
const AS_MEASURED = 0.15;

const MOST_MMOL_PER_L_PER_DAY = 20;

/** Part by which what a tank breathes may be more; it may be less by the same factor. */
export const respirationDoubt = ({ oxygen }: Scenario): number =>
  oxygen.respirationMmolPerLPerDay > 0 ? AS_MEASURED : BY_WORD;

/** The same tank breathing so many times as much; never less than what its carbon and food take. */
export const breathing = (scenario: Scenario, times: number): Scenario => ({
  ...scenario,
  oxygen: {
    ...scenario.oxygen,
    respirationMmolPerLPerDay: Math.min(
      MOST_MMOL_PER_L_PER_DAY,
      breathedMmolPerLPerDay(scenario) * times,
    ),
  },
});
