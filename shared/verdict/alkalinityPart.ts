import { conversionOf, type DisplayUnits } from '../units/display';
import { inputText, numberText, quantityText } from '../units/format';
import type { Band } from '../scenario/limitBands';
import { readColumn } from '../trace/trace';
import { say } from '../words/verdict';
import { dayOf, highest, lastOf, lowest } from './measures';
import type { Outcome } from './outcome';
import { lengthText } from './texts';

/** A drift this large within the band is not called holding, dKH. */
const DRIFT = 0.6;

const said = say.alkalinity;

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
  if (first < band.low || first > band.high) {
    return said.startsOutside(limit(band.low), `${limit(band.high)} ${unit}`, whole(end), length);
  }
  const left = crossings.find(
    ({ limit, into }) => limit.startsWith('alkalinity') && into === 'outside',
  );
  if (left) {
    const [way, passed] =
      left.limit === 'alkalinityLow' ? [said.fallsBelow, band.low] : [said.risesAbove, band.high];
    return way(`${limit(passed)} ${unit}`, String(dayOf(left.timeH)), whole(end), length);
  }
  if (Math.abs(end - first) > DRIFT) {
    return (end > first ? said.rises : said.falls)(number(first), whole(end), length);
  }
  const low = number(lowest(trace, 'alkalinity_dkh').value);
  const high = whole(highest(trace, 'alkalinity_dkh').value);
  return said.holds(low, high, length);
}
