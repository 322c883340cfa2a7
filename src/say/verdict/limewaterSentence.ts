import type { Scenario } from '../../../shared/scenario/schema';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { alkalinityMeqPerG } from '../../../shared/species/additives';
import { NEARLY_ALL, type LimewaterCap } from '../../../shared/verdict/limewaterCap';
import type { DisplayUnits } from '../../../shared/units/display';
import { numberText, quantityText, withDecimal } from '../../../shared/units/format';
import { say } from '../../../shared/words/reasons';
import { litresText } from '../texts';

/** The cap, and the units its reader wants. */
type Told = LimewaterCap & { readonly display: DisplayUnits };

const said = say.limewater;

const asTyped = (value: number, { display }: Told) => withDecimal(String(value), display);
const grams = (value: number, { display }: Told) => numberText(value, 2, '', display);
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
  if (missing < 0.03 * cap.useDkhPerDay) return said.restIsBrought(number(rest, cap));
  const sodaAsh = numberText(sodaAshG(missing, scenario), 1, '', cap.display);
  return cap.othersDkhPerDay > 0.005
    ? said.restIsPartlyMissing(number(missing, cap), number(cap.othersDkhPerDay, cap), sodaAsh)
    : said.restIsMissing(number(missing, cap), sodaAsh);
}

/** What saturated limewater could do at this evaporation, beside what the tank uses. */
function mostSentence(scenario: Scenario, cap: Told): string {
  const most = litres(cap.litresPerDay, cap);
  const { saturatedDkhPerDay, useDkhPerDay } = cap;
  return useDkhPerDay > saturatedDkhPerDay
    ? said.carries(
        most,
        number(saturatedDkhPerDay, cap),
        whole(useDkhPerDay, cap),
        restSentence(scenario, cap),
      )
    : said.couldCarry(most, whole(saturatedDkhPerDay, cap), number(useDkhPerDay, cap));
}

function tooMuchSentence(cap: Told): string {
  const [brought, used] = [whole(cap.broughtDkhPerDay, cap), number(cap.useDkhPerDay, cap)];
  return cap.othersDkhPerDay > 0.005
    ? said.tooMuchTogether(brought, number(cap.othersDkhPerDay, cap), used)
    : said.tooMuch(brought, used);
}

function nothingBindsSentence(cap: Told): string {
  const brought = whole(cap.broughtDkhPerDay, cap);
  return cap.covered < NEARLY_ALL
    ? said.broughtTogether(brought, number(cap.othersDkhPerDay, cap), number(cap.useDkhPerDay, cap))
    : said.nothingBinds(brought, litres(cap.litresPerDay, cap));
}

function bindingSentence(scenario: Scenario, cap: Told): string {
  const { limits, topOff } = scenario;
  switch (cap.binding) {
    case 'co2Supply':
      return said.co2Supply(asTyped(limits.phHighNbs, cap));
    case 'saturation':
      return said.saturation(grams(cap.saturationGPerL, cap), mostSentence(scenario, cap));
    case 'evaporation':
      return said.evaporation(mostSentence(scenario, cap));
    case 'strength':
      return said.strength(
        whole(cap.broughtDkhPerDay, cap),
        asTyped(topOff.gramsPerL, cap),
        mostSentence(scenario, cap),
      );
    case 'tooMuch':
      return tooMuchSentence(cap);
    case 'none':
      return nothingBindsSentence(cap);
  }
}

/** The limit that binds limewater, in a sentence or two. */
export function limewaterSentence(
  scenario: Scenario,
  limewater: LimewaterCap,
  display: DisplayUnits,
): string {
  const cap = { ...limewater, display };
  const { gramsPerL } = scenario.topOff;
  const undissolved = gramsPerL - cap.saturationGPerL;
  return undissolved > 0.02
    ? `${bindingSentence(scenario, cap)} ${said.settles(asTyped(gramsPerL, cap), grams(undissolved, cap))}`
    : bindingSentence(scenario, cap);
}
