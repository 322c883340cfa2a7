import type { Scenario } from '../scenario/schema';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { alkalinityMeqPerG } from '../species/additives';
import type { LimewaterCap } from './limewaterCap';
import type { DisplayUnits } from '../units/display';
import { numberText, quantityText, withDecimal } from '../units/format';
import { litresText } from './texts';

/** The cap, and the units its reader wants. */
type Told = LimewaterCap & { readonly display: DisplayUnits };

const grams = (value: number, { display }: Told) => withDecimal(value.toFixed(2), display);
const number = (dkh: number, { display }: Told) => numberText(dkh, 2, 'dKH', display);
const whole = (dkh: number, { display }: Told) => quantityText(dkh, 2, 'dKH', display);
const litres = (value: number, { display }: Told) =>
  display.volume === 'L'
    ? withDecimal(litresText(value), display)
    : quantityText(value, 1, 'L', display);

/** Grams of soda ash that stand for so many dKH in this tank. */
const sodaAshG = (dkhPerDay: number, { tank }: Scenario) =>
  (dkhPerDay * meqPerLPerDkh * tank.volumeL) / alkalinityMeqPerG('sodiumCarbonate');

/** What is missing beside saturated limewater, and who brings it. */
function restSentence(scenario: Scenario, cap: Told): string {
  const rest = cap.useDkhPerDay - cap.saturatedDkhPerDay;
  const missing = rest - cap.othersDkhPerDay;
  if (missing < 0.03 * cap.useDkhPerDay)
    return `your pumps and water changes bring the other ${number(rest, cap)}.`;
  const soFar =
    cap.othersDkhPerDay > 0.005 ? ` beside the ${number(cap.othersDkhPerDay, cap)} dosed` : '';
  return `another ${number(missing, cap)}${soFar} must come from elsewhere, for instance ${sodaAshG(missing, scenario).toFixed(1)} g of soda ash a day with its calcium.`;
}

/** What saturated limewater could do at this evaporation, beside what the tank uses. */
function mostSentence(scenario: Scenario, cap: Told): string {
  const most = `${litres(cap.litresPerDay, cap)} a day of saturated limewater`;
  return cap.useDkhPerDay > cap.saturatedDkhPerDay
    ? `${most} carry ${number(cap.saturatedDkhPerDay, cap)} of the ${whole(cap.useDkhPerDay, cap)} used on the first day; ${restSentence(scenario, cap)}`
    : `${most} could carry ${whole(cap.saturatedDkhPerDay, cap)} a day, and ${number(cap.useDkhPerDay, cap)} are used: about ${grams(cap.wantedGPerL, cap)} g/L would do it.`;
}

function bindingSentence(scenario: Scenario, cap: Told): string {
  const { limits, topOff } = scenario;
  switch (cap.binding) {
    case 'co2Supply':
      return `CO₂ supply binds limewater: the room’s air cannot feed this much hydroxide, and pH passes your ${limits.phHighNbs}. More aeration, or part of the dose as bicarbonate, lowers it.`;
    case 'saturation':
      return `Saturation binds limewater: water holds no more than ${grams(cap.saturationGPerL, cap)} g/L. ${mostSentence(scenario, cap)}`;
    case 'evaporation':
      return `Evaporation binds limewater. ${mostSentence(scenario, cap)}`;
    case 'strength':
      return `The strength of the mix binds limewater: it brings ${whole(cap.broughtDkhPerDay, cap)} a day at ${topOff.gramsPerL} g/L. ${mostSentence(scenario, cap)}`;
    case 'tooMuch':
      return `More is dosed than is used: limewater brings ${whole(cap.broughtDkhPerDay, cap)} a day${cap.othersDkhPerDay > 0.005 ? ` and other sources ${number(cap.othersDkhPerDay, cap)}` : ''}, the tank uses ${number(cap.useDkhPerDay, cap)}. About ${grams(cap.wantedGPerL, cap)} g/L would do.`;
    case 'none':
      return `Limewater carries the use: ${whole(cap.broughtDkhPerDay, cap)} a day in ${litres(cap.litresPerDay, cap)} of top-off; nothing binds it yet.`;
  }
}

/** The limit that binds limewater, in a sentence or two. */
export function limewaterSentence(
  scenario: Scenario,
  limewater: LimewaterCap,
  display: DisplayUnits,
): string {
  const cap = { ...limewater, display };
  const undissolved = scenario.topOff.gramsPerL - cap.saturationGPerL;
  const settles =
    undissolved > 0.02
      ? ` Of the ${scenario.topOff.gramsPerL} g/L you weigh in, ${grams(undissolved, cap)} stay undissolved on the bottom.`
      : '';
  return bindingSentence(scenario, cap) + settles;
}
