import { limitBands, type Band, type LimitId } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';
import { flags, HIGHEST_PH_NBS, type ColumnId } from '../trace/columns';
import { readColumn, type Crossing, type Trace } from '../trace/trace';
import { limewaterCap, limewaterSentence, type LimewaterCap } from './limewaterCap';
import { dayOf, highest, largestDailyChange, lastOf, lowest } from './measures';
import { emptyReservoirSentence, suppliesOf, suppliesSentence } from './supplies';

export interface Outcome {
  readonly trace: Trace;
  readonly crossings: readonly Crossing[];
  readonly settled: boolean;
}

export interface Verdict {
  /** Follows the trial's name: "holds 8.3–8.7 dKH for 60 days; …". */
  readonly headline: string;
  readonly insideLimits: boolean;
  readonly details: readonly string[];
  readonly limewater: LimewaterCap | undefined;
}

export const phText = (ph: number): string =>
  ph > HIGHEST_PH_NBS ? `>${HIGHEST_PH_NBS}` : ph.toFixed(2);

const columnOf: Record<LimitId, { id: ColumnId; name: string; digits: number; unit: string }> = {
  alkalinity: { id: 'alkalinity_dkh', name: 'alkalinity', digits: 1, unit: ' dKH' },
  ph: { id: 'ph_nbs', name: 'pH', digits: 2, unit: '' },
  calcium: { id: 'calcium_mg_l', name: 'calcium', digits: 0, unit: ' mg/L' },
  magnesium: { id: 'magnesium_mg_l', name: 'magnesium', digits: 0, unit: ' mg/L' },
  salinity: { id: 'salinity_ppt', name: 'salinity', digits: 1, unit: ' ppt' },
};

/** A stretch of time in the largest unit that fits: hours for a day, days beyond. */
const lengthText = (hours: number) =>
  hours < 48 ? `${Math.round(hours)} hours` : `${Math.round(hours / 24)} days`;

function alkalinityPart(band: Band, { trace, crossings }: Outcome): string {
  const low = lowest(trace, 'alkalinity_dkh');
  const high = highest(trace, 'alkalinity_dkh');
  const length = lengthText(trace.rows - 1);
  const left = crossings.find(
    ({ limit, into }) => limit.startsWith('alkalinity') && into === 'outside',
  );
  const startedOutside =
    readColumn(trace, 'alkalinity_dkh')[0]! < band.low ||
    readColumn(trace, 'alkalinity_dkh')[0]! > band.high;
  if (!left && !startedOutside) {
    return `holds ${low.value.toFixed(1)}–${high.value.toFixed(1)} dKH for ${length}`;
  }
  const end = lastOf(trace, 'alkalinity_dkh').toFixed(1);
  if (startedOutside)
    return `starts outside your ${band.low}–${band.high} dKH and is at ${end} dKH after ${length}`;
  const way =
    left!.limit === 'alkalinityLow' ? `falls below ${band.low}` : `rises above ${band.high}`;
  return `${way} dKH on day ${dayOf(left!.timeH)} and is at ${end} dKH after ${length}`;
}

/** How a quantity leaves the keeper's band; nothing when it does not. */
function outsideSentence({ id, low, high }: Band, trace: Trace): string | undefined {
  const { id: column, name, digits, unit } = columnOf[id];
  const top = highest(trace, column);
  const bottom = lowest(trace, column);
  const text = (value: number) => (id === 'ph' ? phText(value) : value.toFixed(digits));
  const parts = [
    top.value > high &&
      `reaches ${text(top.value)}${unit} on day ${dayOf(top.timeH)} (your limit ${high})`,
    bottom.value < low &&
      `sinks to ${text(bottom.value)}${unit} on day ${dayOf(bottom.timeH)} (your limit ${low})`,
  ].filter((part) => typeof part === 'string');
  return parts.length > 0 ? `${name} ${parts.join(' and ')}` : undefined;
}

function flagSentences(trace: Trace): string[] {
  const bits = readColumn(trace, 'flags');
  return Object.values(flags).flatMap(({ bit, text }) => {
    const first = bits.findIndex((value) => (value & bit) !== 0);
    return first < 0 ? [] : [`From day ${dayOf(first)}: ${text}.`];
  });
}

/** What a trial says against the keeper's limits: the answer first, its reasons after. */
export function verdictOf(scenario: Scenario, outcome: Outcome): Verdict {
  const { trace } = outcome;
  const bands = limitBands(scenario.limits);
  const peak = highest(trace, 'ph_nbs');
  const limewater = limewaterCap(scenario, trace);
  const daily = largestDailyChange(trace);
  const outside = bands.map((band) => outsideSentence(band, trace)).filter((s) => s !== undefined);
  const tooFast = Math.abs(daily.value) > scenario.limits.alkalinityChangeDkhPerDay;
  const headline = [
    alkalinityPart(bands[0]!, outcome),
    `pH peaks at ${phText(peak.value)} on day ${dayOf(peak.timeH)}`,
    ...(limewater ? [`limewater covers ${Math.round(limewater.covered * 100)} % of use`] : []),
  ].join('; ');
  const details = [
    ...(outside.length > 0
      ? [`Outside your limits: ${outside.join('; ')}.`]
      : ['Everything stays inside your limits.']),
    ...(tooFast
      ? [
          `Alkalinity moves by ${daily.value.toFixed(2)} dKH within a day (day ${dayOf(daily.timeH)}); your limit is ${scenario.limits.alkalinityChangeDkhPerDay}.`,
        ]
      : []),
    ...(limewater ? [limewaterSentence(scenario, limewater)] : []),
    ...(outcome.settled
      ? []
      : [
          'This plan has no steady daily cycle: CO₂ leaves faster than the room brings it. The trial starts in balance with the room instead.',
        ]),
    emptyReservoirSentence(scenario, trace),
    suppliesSentence(suppliesOf(scenario, trace)),
    ...flagSentences(trace),
  ].filter((text) => text !== '');
  return {
    headline: `${headline}.`,
    insideLimits: outside.length === 0 && !tooFast,
    details,
    limewater,
  };
}
