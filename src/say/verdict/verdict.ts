import { limitBands } from '../../../shared/scenario/limitBands';
import type { Scenario } from '../../../shared/scenario/schema';
import { conversionOf, usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import { numberText, withDecimal } from '../../../shared/units/format';
import { lineOf } from '../../../shared/verdict/lineResult';
import { dayOf } from '../../../shared/verdict/measures';
import type { Outcome } from '../../../shared/verdict/outcome';
import { verdictOf, type Verdict } from '../../../shared/verdict/verdict';
import { figure } from '../../../shared/words/figure';
import { say as quantities } from '../../../shared/words/quantities';
import { say } from '../../../shared/words/verdict';
import { phText } from '../texts';
import { alkalinityPart } from './alkalinityPart';
import { limewaterSentence } from './limewaterSentence';
import { outsideSentences, watchedText } from './outsideSentences';
import { stoppedSentence } from './stopped';
import { dryReservoirSentence, suppliesSentence } from './supplies';

/** A verdict in the reader's words: the answer first, its reasons after. */
export interface ToldVerdict extends Verdict {
  /** Follows the trial's name: "holds 8.3–8.7 dKH for 60 days; …". */
  readonly headline: string;
  readonly details: readonly string[];
}

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

function headlineOf(verdict: Verdict, { limits }: Scenario, display: DisplayUnits): string {
  const { stopped, limewater, lines } = verdict;
  const peak = lineOf(lines, 'phHigh');
  const parts = [
    ...(stopped ? [say.stopsOnDay(String(dayOf(stopped.timeH)))] : []),
    alkalinityPart(limitBands(limits)[0]!, verdict, display),
    say.phPeaks(withDecimal(phText(peak.worst), display), String(dayOf(peak.worstH))),
    ...(limewater ? [say.limewaterCovers(String(Math.round(limewater.covered * 100)))] : []),
  ];
  return `${parts.join('; ')}.`;
}

/** A verdict that was found elsewhere, in the reader's words and units. */
export function toldVerdict(
  verdict: Verdict,
  scenario: Scenario,
  display: DisplayUnits = usualDisplay,
): ToldVerdict {
  const { stopped, dry, broken, insideLimits, lines, limewater, settled, supplies } = verdict;
  const { topOff } = scenario;
  const details = [
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
  return { ...verdict, headline: headlineOf(verdict, scenario, display), details };
}

/** What a trial says against the keeper's limits, in the reader's words and units. */
export const tellVerdict = (
  scenario: Scenario,
  outcome: Outcome,
  display: DisplayUnits = usualDisplay,
): ToldVerdict => toldVerdict(verdictOf(scenario, outcome), scenario, display);
