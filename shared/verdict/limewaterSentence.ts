import type { Scenario } from '../scenario/schema';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { alkalinityMeqPerG } from '../species/additives';
import type { LimewaterCap } from './limewaterCap';
import { litresText } from './texts';

const dkh = (value: number) => value.toFixed(2);

/** Grams of soda ash that stand for so many dKH in this tank. */
const sodaAshG = (dkhPerDay: number, { tank }: Scenario) =>
  (dkhPerDay * meqPerLPerDkh * tank.volumeL) / alkalinityMeqPerG('sodiumCarbonate');

/** What is missing beside saturated limewater, and who brings it. */
function restSentence(scenario: Scenario, cap: LimewaterCap): string {
  const rest = cap.useDkhPerDay - cap.saturatedDkhPerDay;
  const missing = rest - cap.othersDkhPerDay;
  if (missing < 0.03 * cap.useDkhPerDay)
    return `your pumps and water changes bring the other ${dkh(rest)}.`;
  const soFar = cap.othersDkhPerDay > 0.005 ? ` beside the ${dkh(cap.othersDkhPerDay)} dosed` : '';
  return `another ${dkh(missing)}${soFar} must come from elsewhere, for instance ${sodaAshG(missing, scenario).toFixed(1)} g of soda ash a day with its calcium.`;
}

/** What saturated limewater could do at this evaporation, beside what the tank uses. */
function mostSentence(scenario: Scenario, cap: LimewaterCap): string {
  const litres = `${litresText(cap.litresPerDay)} a day of saturated limewater`;
  return cap.useDkhPerDay > cap.saturatedDkhPerDay
    ? `${litres} carry ${dkh(cap.saturatedDkhPerDay)} of the ${dkh(cap.useDkhPerDay)} dKH used on the first day; ${restSentence(scenario, cap)}`
    : `${litres} could carry ${dkh(cap.saturatedDkhPerDay)} dKH a day, and ${dkh(cap.useDkhPerDay)} are used: about ${neededGPerL(scenario, cap)} g/L would do it.`;
}

/** The strength at which limewater brings what the first day uses and nothing else brings. */
const neededGPerL = ({ topOff }: Scenario, cap: LimewaterCap): string =>
  (
    (Math.min(topOff.gramsPerL, cap.saturationGPerL) *
      Math.max(0, cap.useDkhPerDay - cap.othersDkhPerDay)) /
    cap.broughtDkhPerDay
  ).toFixed(2);

function bindingSentence(scenario: Scenario, cap: LimewaterCap): string {
  const { limits, topOff } = scenario;
  switch (cap.binding) {
    case 'co2Supply':
      return `CO₂ supply binds limewater: the room’s air cannot feed this much hydroxide, and pH passes your ${limits.phHighNbs}. More aeration, or part of the dose as bicarbonate, lowers it.`;
    case 'saturation':
      return `Saturation binds limewater: water holds no more than ${dkh(cap.saturationGPerL)} g/L. ${mostSentence(scenario, cap)}`;
    case 'evaporation':
      return `Evaporation binds limewater. ${mostSentence(scenario, cap)}`;
    case 'strength':
      return `The strength of the mix binds limewater: it brings ${dkh(cap.broughtDkhPerDay)} dKH a day at ${topOff.gramsPerL} g/L. ${mostSentence(scenario, cap)}`;
    case 'tooMuch':
      return `More is dosed than is used: limewater brings ${dkh(cap.broughtDkhPerDay)} dKH a day${cap.othersDkhPerDay > 0.005 ? ` and other sources ${dkh(cap.othersDkhPerDay)}` : ''}, the tank uses ${dkh(cap.useDkhPerDay)}. About ${neededGPerL(scenario, cap)} g/L would do.`;
    case 'none':
      return `Limewater carries the use: ${dkh(cap.broughtDkhPerDay)} dKH a day in ${litresText(cap.litresPerDay)} of top-off; nothing binds it yet.`;
  }
}

/** The limit that binds limewater, in a sentence or two. */
export function limewaterSentence(scenario: Scenario, cap: LimewaterCap): string {
  const undissolved = scenario.topOff.gramsPerL - cap.saturationGPerL;
  const settles =
    undissolved > 0.02
      ? ` Of the ${scenario.topOff.gramsPerL} g/L you weigh in, ${dkh(undissolved)} stay undissolved on the bottom.`
      : '';
  return bindingSentence(scenario, cap) + settles;
}
