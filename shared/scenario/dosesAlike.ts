import { differences } from './change';
import type { Scenario } from './schema';

/** What brings something into the water day by day, and how strong it is. */
const DOSING = /^(dosers|calciumReactor|topOff\.(additive|gramsPerL|settledG|saturationPercent))\b/;
/** What a bottle is called, and how much stands in it. */
const ASIDE = /\.(name|stockL)$/;

/** Whether two plans dose the same; reservoirs, pumps' strength and all of the tank may differ. */
export const dosesAlike = (a: Scenario, b: Scenario): boolean =>
  !differences(a, b).some(({ path }) => DOSING.test(path) && !ASIDE.test(path));
