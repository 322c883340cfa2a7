import type { Band } from '../scenario/limitBands';
import { readColumn } from '../trace/trace';
import { dayOf, highest, lastOf, lowest } from './measures';
import type { Outcome } from './outcome';
import { lengthText } from './texts';

/** A drift this large within the band is not called holding, dKH. */
const DRIFT = 0.6;

/** What alkalinity does, in the words of a headline. */
export function alkalinityPart(band: Band, { trace, crossings }: Outcome): string {
  const values = readColumn(trace, 'alkalinity_dkh');
  const length = lengthText(trace.rows - 1);
  const first = values[0]!;
  const end = lastOf(trace, 'alkalinity_dkh');
  const at = `is at ${end.toFixed(1)} dKH after ${length}`;
  if (first < band.low || first > band.high) {
    return `starts outside your ${band.low}–${band.high} dKH and ${at}`;
  }
  const left = crossings.find(
    ({ limit, into }) => limit.startsWith('alkalinity') && into === 'outside',
  );
  if (left) {
    const way =
      left.limit === 'alkalinityLow' ? `falls below ${band.low}` : `rises above ${band.high}`;
    return `${way} dKH on day ${dayOf(left.timeH)} and ${at}`;
  }
  if (Math.abs(end - first) > DRIFT) {
    return `${end > first ? 'rises' : 'falls'} from ${first.toFixed(1)} to ${end.toFixed(1)} dKH in ${length}, inside your band so far`;
  }
  const low = lowest(trace, 'alkalinity_dkh').value.toFixed(1);
  const high = highest(trace, 'alkalinity_dkh').value.toFixed(1);
  return `holds ${low}–${high} dKH for ${length}`;
}
