import { limitBands, type Band, type LimitId } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';
import { flags, type ColumnId } from '../trace/columns';
import { readColumn, type Trace } from '../trace/trace';
import { conversionOf, usualDisplay, type DisplayUnits } from '../units/display';
import { inputText, numberText, quantityText, withDecimal } from '../units/format';
import { alkalinityPart } from './alkalinityPart';
import { limewaterCap, type LimewaterCap } from './limewaterCap';
import { limewaterSentence } from './limewaterSentence';
import { dayOf, highest, largestDailyChange, lowest, usePerDay } from './measures';
import type { Outcome } from './outcome';
import { emptyReservoirSentence, suppliesOf, suppliesSentence } from './supplies';
import { phText } from './texts';

export interface Verdict {
  /** Follows the trial's name: "holds 8.3–8.7 dKH for 60 days; …". */
  readonly headline: string;
  readonly insideLimits: boolean;
  readonly details: readonly string[];
  readonly limewater: LimewaterCap | undefined;
  /** Whether the reservoir stands empty at times: nothing else can be blamed before it is refilled. */
  readonly runsDry: boolean;
}

const columnOf: Record<LimitId, { id: ColumnId; name: string; digits: number; unit: string }> = {
  alkalinity: { id: 'alkalinity_dkh', name: 'alkalinity', digits: 1, unit: 'dKH' },
  ph: { id: 'ph_nbs', name: 'pH', digits: 2, unit: '' },
  calcium: { id: 'calcium_mg_l', name: 'calcium', digits: 0, unit: 'mg/L' },
  magnesium: { id: 'magnesium_mg_l', name: 'magnesium', digits: 0, unit: 'mg/L' },
  salinity: { id: 'salinity_ppt', name: 'salinity', digits: 1, unit: 'ppt' },
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
    top.value > high &&
      `reaches ${text(top.value)} on day ${dayOf(top.timeH)} (your limit ${limit(high)})`,
    bottom.value < low &&
      `sinks to ${text(bottom.value)} on day ${dayOf(bottom.timeH)} (your limit ${limit(low)})`,
  ].filter((part) => typeof part === 'string');
  return parts.length > 0 ? `${name} ${parts.join(' and ')}` : undefined;
}

/** Growth outside the laws' range is shown on its own chart: it is so common that it would dull. */
const { highPh, temperature, salinity } = flags;

function flagSentences(trace: Trace): string[] {
  const bits = readColumn(trace, 'flags');
  return [highPh, temperature, salinity].flatMap(({ bit, text }) => {
    const first = bits.findIndex((value) => (value & bit) !== 0);
    return first < 0 ? [] : [`From day ${dayOf(first)}: ${text}.`];
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
    ? `Corals slow down as saturation falls: the tank uses ${number(last)} ${unit} a day at the end, ${number(first)} at the start.`
    : `Use climbs from ${number(first)} to ${number(last)} ${unit} a day.`;
}

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
  const dry = emptyReservoirSentence(scenario, trace);
  const headline = [
    ...(stopped ? [`stops on day ${dayOf(stopped.timeH)}`] : []),
    alkalinityPart(bands[0]!, outcome, display),
    `pH peaks at ${withDecimal(phText(peak.value), display)} on day ${dayOf(peak.timeH)}`,
    ...(limewater ? [`limewater covers ${Math.round(limewater.covered * 100)} % of use`] : []),
  ].join('; ');
  const insideLimits = outside.length === 0 && !tooFast && !stopped;
  const details = [
    stopped?.reason ?? '',
    dry,
    outside.length > 0 ? `Outside your limits: ${outside.join('; ')}.` : '',
    tooFast
      ? `Alkalinity moves by ${daily.value < 0 ? '−' : '+'}${quantityText(Math.abs(daily.value), 2, 'dKH', display)} within a day (day ${dayOf(daily.timeH)}); your limit is ${inputText(limits.alkalinityChangeDkhPerDay, 1, 'dKH', display)}.`
      : '',
    insideLimits ? 'Everything stays inside your limits.' : '',
    scenario.topOff.additive !== 'none' && scenario.topOff.gramsPerL === 0
      ? 'Nothing is dissolved in the top-off yet: set “Strength of the mix”.'
      : '',
    // With an empty reservoir nothing else can be blamed before it is refilled.
    limewater && dry === '' ? limewaterSentence(scenario, limewater, display) : '',
    slowingSentence(trace, display),
    outcome.settled
      ? ''
      : 'This plan has no steady daily cycle: CO₂ leaves faster than the room brings it. The trial starts in balance with the room instead.',
    suppliesSentence(suppliesOf(scenario, trace)),
    ...flagSentences(trace),
  ].filter((text) => text !== '');
  return { headline: `${headline}.`, insideLimits, details, limewater, runsDry: dry !== '' };
}
