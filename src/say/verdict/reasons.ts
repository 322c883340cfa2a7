import type { Scenario } from '../../../shared/scenario/schema';
import { conversionOf, usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import { numberText } from '../../../shared/units/format';
import { dayOf } from '../../../shared/verdict/measures';
import type { Verdict } from '../../../shared/verdict/verdict';
import { figure } from '../../../shared/words/figure';
import { say as quantities } from '../../../shared/words/quantities';
import { say } from '../../../shared/words/reasons';
import { limewaterSentence } from './limewaterSentence';
import { outsideSentences, watchedText } from './outsideSentences';
import { stoppedSentence } from './stopped';
import { dryReservoirSentence, suppliesSentence } from './supplies';

const shortPumps = ({ shortPumps: pumps }: Verdict): string[] =>
  pumps.map(({ name, mlPerDay, givenMlPerDay }) =>
    say.pumpTooSlow(name, figure(mlPerDay), figure(givenMlPerDay)),
  );

function foodSentence(
  { foodTakesDkhPerDay: used }: Verdict,
  { corals }: Scenario,
  display: DisplayUnits,
): string {
  if (used === undefined) return '';
  const number = (dkh: number) => numberText(dkh, 2, 'dKH', display);
  return say.foodTakesMore(number(used), number(corals.useDkhPerDay));
}

const flagSentences = ({ flags }: Verdict): string[] =>
  flags.map(({ flag, firstH }) => say.fromDay(String(dayOf(firstH)), quantities.flags[flag]));

/** Below the line of harm corals do not merely slow down. */
const isHarmed = ({ broken }: Verdict): boolean => broken.some(({ id }) => id === 'alkalinityHarm');

function slowingSentence(verdict: Verdict, display: DisplayUnits): string {
  const { useMoves } = verdict;
  if (!useMoves || isHarmed(verdict)) return '';
  const { firstDkhPerDay, lastDkhPerDay } = useMoves;
  const [first, last] = [firstDkhPerDay, lastDkhPerDay].map((dkh) =>
    numberText(dkh, 2, 'dKH', display),
  ) as [string, string];
  const { unit } = conversionOf('dKH', display);
  return lastDkhPerDay < firstDkhPerDay
    ? say.slowing(last, unit, first)
    : say.climbing(first, last, unit);
}

/** Why a verdict is what it is, and what else is known: a sentence each, what matters most first. */
export function reasonsOf(
  verdict: Verdict,
  scenario: Scenario,
  display: DisplayUnits = usualDisplay,
): readonly string[] {
  const { stopped, dry, broken, insideLimits, lines, limewater, settled, supplies } = verdict;
  const { topOff } = scenario;
  return [
    stopped ? stoppedSentence(stopped) : '',
    dry ? dryReservoirSentence(dry, scenario) : '',
    ...shortPumps(verdict),
    foodSentence(verdict, scenario, display),
    ...outsideSentences(broken, display),
    insideLimits ? say.everythingInside(watchedText(lines)) : '',
    topOff.additive !== 'none' && topOff.gramsPerL === 0 ? say.nothingDissolved : '',
    limewater && !dry ? limewaterSentence(scenario, limewater, display) : '',
    slowingSentence(verdict, display),
    settled ? '' : say.noCycle,
    suppliesSentence(supplies, display),
    ...flagSentences(verdict),
  ].filter((text) => text !== '');
}
