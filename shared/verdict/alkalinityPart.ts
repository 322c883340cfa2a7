import { conversionOf, type DisplayUnits } from '../units/display';
import { inputText, numberText, quantityText } from '../units/format';
import type { Band } from '../scenario/limitBands';
import { readColumn } from '../trace/trace';
import { say } from '../words/verdict';
import { lineOf } from './lineResult';
import { dayOf, lastOf } from './measures';
import type { Outcome } from './outcome';
import { lengthText } from './texts';

/** A drift this large within the band is not called holding, dKH. */
const DRIFT = 0.6;

const said = say.alkalinity;

/** What alkalinity does, in the words of a headline. */
export function alkalinityPart(
  band: Band,
  { trace, lines }: Outcome,
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
  const [below, above] = [lineOf(lines, 'alkalinityLow'), lineOf(lines, 'alkalinityHigh')];
  const leftBelow = below.firstH ?? Infinity;
  const leftAbove = above.firstH ?? Infinity;
  if (Math.min(leftBelow, leftAbove) < Infinity) {
    const [way, line] = leftBelow < leftAbove ? [said.fallsBelow, below] : [said.risesAbove, above];
    return way(`${limit(line.limit)} ${unit}`, String(dayOf(line.firstH!)), whole(end), length);
  }
  if (Math.abs(end - first) > DRIFT) {
    return (end > first ? said.rises : said.falls)(number(first), whole(end), length);
  }
  return said.holds(number(below.worst), whole(above.worst), length);
}
