import { conversionOf, type DisplayUnits } from '../units/display';
import { inputText, numberText, quantityText } from '../units/format';
import type { Band } from '../scenario/limitBands';
import { readColumn } from '../trace/trace';
import { dayOf, highest, lastOf, lowest } from './measures';
import type { Outcome } from './outcome';
import { lengthText } from './texts';

/** A drift this large within the band is not called holding, dKH. */
const DRIFT = 0.6;

/** What alkalinity does, in the words of a headline. */
export function alkalinityPart(
  band: Band,
  { trace, crossings }: Outcome,
  display: DisplayUnits,
): string {
  const number = (dkh: number) => numberText(dkh, 1, 'dKH', display);
  const whole = (dkh: number) => quantityText(dkh, 1, 'dKH', display);
  const limit = (dkh: number) => inputText(dkh, 1, 'dKH', display);
  const { unit } = conversionOf('dKH', display);
  const values = readColumn(trace, 'alkalinity_dkh');
  const length = lengthText(trace.rows - 1);
  const first = values[0]!;
  const end = lastOf(trace, 'alkalinity_dkh');
  const at = `is at ${whole(end)} after ${length}`;
  if (first < band.low || first > band.high) {
    return `starts outside your ${limit(band.low)}–${limit(band.high)} ${unit} and ${at}`;
  }
  const left = crossings.find(
    ({ limit, into }) => limit.startsWith('alkalinity') && into === 'outside',
  );
  if (left) {
    const way =
      left.limit === 'alkalinityLow'
        ? `falls below ${limit(band.low)}`
        : `rises above ${limit(band.high)}`;
    return `${way} ${unit} on day ${dayOf(left.timeH)} and ${at}`;
  }
  if (Math.abs(end - first) > DRIFT) {
    return `${end > first ? 'rises' : 'falls'} from ${number(first)} to ${whole(end)} in ${length}, inside your band so far`;
  }
  const low = number(lowest(trace, 'alkalinity_dkh').value);
  const high = whole(highest(trace, 'alkalinity_dkh').value);
  return `holds ${low}–${high} for ${length}`;
}
