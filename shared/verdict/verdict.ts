import { limitBands, type Band, type LimitId } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';
import { flags, type ColumnId } from '../trace/columns';
import { readColumn, type Trace } from '../trace/trace';
import { conversionOf, usualDisplay, type DisplayUnits } from '../units/display';
import { inputText, numberText, signedText, withDecimal } from '../units/format';
import { say as quantities } from '../words/quantities';
import { say } from '../words/verdict';
import { alkalinityPart } from './alkalinityPart';
import { limewaterCap, limewaterStrengthFor, type LimewaterCap } from './limewaterCap';
import { limewaterSentence } from './limewaterSentence';
import { dayOf, highest, largestDailyChange, lowest, usePerDay } from './measures';
import type { Outcome } from './outcome';
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
  readonly insideLimits: boolean;
  readonly details: readonly string[];
  readonly limewater: LimewaterCap | undefined;
  readonly offer: Offer;
}

/** The one change that a verdict asks for first. */
export interface Offer {
  readonly mixGPerL?: number;
  readonly refillEveryDays?: number;
}

const { limits } = quantities;

const columnOf: Record<LimitId, { id: ColumnId; name: string; digits: number; unit: string }> = {
  alkalinity: { id: 'alkalinity_dkh', name: limits.alkalinity, digits: 1, unit: 'dKH' },
  ph: { id: 'ph_nbs', name: limits.ph, digits: 2, unit: '' },
  calcium: { id: 'calcium_mg_l', name: limits.calcium, digits: 0, unit: 'mg/L' },
  magnesium: { id: 'magnesium_mg_l', name: limits.magnesium, digits: 0, unit: 'mg/L' },
  salinity: { id: 'salinity_ppt', name: limits.salinity, digits: 1, unit: 'ppt' },
};

/** How a quantity leaves the keeper's band; nothing when it does not. */
function outsideSentence(
  { id, low, high }: Band,
  trace: Trace,
  display: DisplayUnits,
): string | undefined {
  const { id: column, name, digits, unit } = columnOf[id];
  const top = highest(trace, column);
  const bottom = lowest(trace, column);
  const shown = conversionOf(unit, display).unit;
  const text = (value: number) =>
    id === 'ph'
      ? withDecimal(phText(value), display)
      : `${numberText(value, digits, unit, display)} ${shown}`;
  const limit = (value: number) => inputText(value, 1, unit, display);
  const parts = [
    top.value > high && say.outside.reaches(text(top.value), String(dayOf(top.timeH)), limit(high)),
    bottom.value < low &&
      say.outside.sinks(text(bottom.value), String(dayOf(bottom.timeH)), limit(low)),
  ].filter((part) => typeof part === 'string');
  return parts.length > 0 ? `${name} ${parts.join(say.outside.and)}` : undefined;
}

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

/** With an empty reservoir nothing else can be blamed before it is refilled. */
function offerOf(
  scenario: Scenario,
  trace: Trace,
  limewater: LimewaterCap | undefined,
  dry: DryReservoir | undefined,
): Offer {
  if (dry) return dry.lastsDays >= 1 ? { refillEveryDays: dry.lastsDays } : {};
  const ways: readonly string[] = ['strength', 'tooMuch'];
  const wanted = isUnmixed(scenario)
    ? limewaterStrengthFor(scenario, trace)
    : limewater &&
        ways.includes(limewater.binding) &&
        limewater.wantedGPerL < limewater.saturationGPerL
      ? limewater.wantedGPerL
      : 0;
  const mixGPerL = Number(wanted.toFixed(2));
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
  const { trace, stopped } = outcome;
  const { limits } = scenario;
  const bands = limitBands(limits);
  const peak = highest(trace, 'ph_nbs');
  const limewater = stopped ? undefined : limewaterCap(scenario, trace);
  const daily = largestDailyChange(trace);
  const outside = bands
    .map((band) => outsideSentence(band, trace, display))
    .filter((s) => s !== undefined);
  const tooFast = Math.abs(daily.value) > limits.alkalinityChangeDkhPerDay;
  const dry = dryReservoir(scenario, trace);
  const headline = [
    ...(stopped ? [say.stopsOnDay(String(dayOf(stopped.timeH)))] : []),
    alkalinityPart(bands[0]!, outcome, display),
    say.phPeaks(withDecimal(phText(peak.value), display), String(dayOf(peak.timeH))),
    ...(limewater ? [say.limewaterCovers(String(Math.round(limewater.covered * 100)))] : []),
  ].join('; ');
  const insideLimits = outside.length === 0 && !tooFast && !stopped;
  const details = [
    stopped?.reason ?? '',
    dry ? dryReservoirSentence(dry) : '',
    outside.length > 0 ? say.outside.all(outside.join('; ')) : '',
    tooFast
      ? say.tooFast(
          signedText(daily.value, 2, 'dKH', display),
          String(dayOf(daily.timeH)),
          inputText(limits.alkalinityChangeDkhPerDay, 1, 'dKH', display),
        )
      : '',
    insideLimits ? say.everythingInside : '',
    scenario.topOff.additive !== 'none' && scenario.topOff.gramsPerL === 0
      ? say.nothingDissolved
      : '',
    limewater && !dry ? limewaterSentence(scenario, limewater, display) : '',
    slowingSentence(trace, display),
    outcome.settled ? '' : say.noCycle,
    suppliesSentence(suppliesOf(scenario, trace), display),
    ...flagSentences(trace),
  ].filter((text) => text !== '');
  const offer = offerOf(scenario, trace, limewater, dry);
  return { headline: `${headline}.`, insideLimits, details, limewater, offer };
}
