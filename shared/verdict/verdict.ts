import { toDecimals } from '../units/digits';
import { threeFigures } from '../recipe/threeFigures';
import { figure } from '../words/figure';
import { givenMlPerDay } from '../devices/doseTimes';
import { limitBands } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';
import { flags } from '../trace/columns';
import { readColumn, type Trace } from '../trace/trace';
import { conversionOf, usualDisplay, type DisplayUnits } from '../units/display';
import { numberText, withDecimal } from '../units/format';
import { say } from '../words/verdict';
import { alkalinityPart } from './alkalinityPart';
import { limewaterCap, limewaterStrengthFor, type LimewaterCap } from './limewaterCap';
import { limewaterSentence } from './limewaterSentence';
import { lineOf, passed, type LineResult } from './lineResult';
import { dayOf, ledgerBetween, usePerDay } from './measures';
import type { Outcome } from './outcome';
import { outsideSentences, watchedText } from './outsideSentences';
import {
  dryReservoir,
  dryReservoirSentence,
  suppliesOf,
  suppliesSentence,
  type DryReservoir,
} from './supplies';
import { phText } from './texts';

export interface Verdict {
  /** Follows the trial's name: "holds 8.3–8.7 dKH for 60 days; …". */
  readonly headline: string;
  /** No watched line was passed, and the trial ran to its end. */
  readonly insideLimits: boolean;
  /** The lines that were passed. */
  readonly broken: readonly LineResult[];
  readonly details: readonly string[];
  readonly limewater: LimewaterCap | undefined;
  readonly offer: Offer;
}

/** The one change that a verdict asks for first. */
export interface Offer {
  readonly mixGPerL?: number;
  readonly refillEveryDays?: number;
}

/** Pumps whose hours are too few for what is set. */
const shortPumps = ({ dosers }: Scenario): string[] =>
  dosers.flatMap(({ name, mlPerDay, schedule }) => {
    const given = givenMlPerDay(schedule, mlPerDay);
    return given < mlPerDay * 0.999
      ? [say.pumpTooSlow(name, figure(mlPerDay), figure(threeFigures(given)))]
      : [];
  });

/** What food and nitrate take without any coral, when that is more than the use that was typed. */
function useSentence({ corals }: Scenario, trace: Trace, display: DisplayUnits): string {
  const hours = trace.rows - 1;
  if (corals.measuredAs !== 'use' || hours < 24) return '';
  const used = usePerDay(trace, 0, 24);
  if (used < corals.useDkhPerDay + LEAST_USE_DKH) return '';
  const grown = trace.ledger.some(({ id, role }) => role === 'growth' && taken(trace, id) > 0);
  const number = (dkh: number) => numberText(dkh, 2, 'dKH', display);
  return grown ? '' : say.foodTakesMore(number(used), number(corals.useDkhPerDay));
}
const taken = (trace: Trace, id: string): number => -ledgerBetween(trace, id, 0, 24);
/** Less than a test can tell. */
const LEAST_USE_DKH = 0.01;

/** Growth outside the laws' range is shown on its own chart: it is so common that it would dull. */
const { highPh, temperature, salinity } = flags;

function flagSentences(trace: Trace): string[] {
  const bits = readColumn(trace, 'flags');
  return [highPh, temperature, salinity].flatMap(({ bit, text }) => {
    const first = bits.findIndex((value) => (value & bit) !== 0);
    return first < 0 ? [] : [say.fromDay(String(dayOf(first)), text)];
  });
}

/** Corals take less as saturation falls: it flatters a plan that lets alkalinity sink. */
function slowingSentence(trace: Trace, display: DisplayUnits): string {
  const hours = trace.rows - 1;
  if (hours < 72) return '';
  const first = usePerDay(trace, 0, 24);
  const last = usePerDay(trace, hours - 24, hours);
  if (Math.abs(last - first) < Math.max(0.1 * first, 0.05)) return '';
  const number = (dkh: number) => numberText(dkh, 2, 'dKH', display);
  const { unit } = conversionOf('dKH', display);
  return last < first
    ? say.slowing(number(last), unit, number(first))
    : say.climbing(number(first), number(last), unit);
}

/** Below the line of harm corals do not merely slow down. */
const isHarmed = (broken: readonly LineResult[]): boolean =>
  broken.some(({ id }) => id === 'alkalinityHarm');

/** With an empty reservoir nothing else can be blamed before it is refilled. */
function offerOf(
  scenario: Scenario,
  trace: Trace,
  limewater: LimewaterCap | undefined,
  dry: DryReservoir | undefined,
): Offer {
  if (scenario.faults.length > 0) return {};
  if (dry) return dry.lastsDays >= 1 ? { refillEveryDays: dry.lastsDays } : {};
  const ways: readonly string[] = ['strength', 'tooMuch'];
  const wanted = isUnmixed(scenario)
    ? limewaterStrengthFor(scenario, trace)
    : limewater &&
        ways.includes(limewater.binding) &&
        limewater.wantedGPerL < limewater.saturationGPerL
      ? limewater.wantedGPerL
      : 0;
  const mixGPerL = toDecimals(wanted, 2);
  return mixGPerL > 0 ? { mixGPerL } : {};
}

const isUnmixed = ({ topOff }: Scenario): boolean =>
  topOff.additive === 'calciumHydroxide' && topOff.gramsPerL === 0 && topOff.reservoirL > 0;

/** What a trial says against the keeper's limits: the answer first, its reasons after. */
export function verdictOf(
  scenario: Scenario,
  outcome: Outcome,
  display: DisplayUnits = usualDisplay,
): Verdict {
  const { trace, stopped, lines } = outcome;
  const peak = lineOf(lines, 'phHigh');
  const limewater = stopped ? undefined : limewaterCap(scenario, outcome);
  const broken = passed(lines);
  const dry = dryReservoir(scenario, trace);
  const headline = [
    ...(stopped ? [say.stopsOnDay(String(dayOf(stopped.timeH)))] : []),
    alkalinityPart(limitBands(scenario.limits)[0]!, outcome, display),
    say.phPeaks(withDecimal(phText(peak.worst), display), String(dayOf(peak.worstH))),
    ...(limewater ? [say.limewaterCovers(String(Math.round(limewater.covered * 100)))] : []),
  ].join('; ');
  const insideLimits = broken.length === 0 && !stopped;
  const details = [
    stopped?.reason ?? '',
    dry ? dryReservoirSentence(dry, scenario) : '',
    ...shortPumps(scenario),
    useSentence(scenario, trace, display),
    ...outsideSentences(broken, display),
    insideLimits ? say.everythingInside(watchedText(lines)) : '',
    scenario.topOff.additive !== 'none' && scenario.topOff.gramsPerL === 0
      ? say.nothingDissolved
      : '',
    limewater && !dry ? limewaterSentence(scenario, limewater, display) : '',
    isHarmed(broken) ? '' : slowingSentence(trace, display),
    outcome.settled ? '' : say.noCycle,
    suppliesSentence(suppliesOf(scenario, trace), display),
    ...flagSentences(trace),
  ].filter((text) => text !== '');
  const offer = offerOf(scenario, trace, limewater, dry);
  return { headline: `${headline}.`, insideLimits, broken, details, limewater, offer };
}
