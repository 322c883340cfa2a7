import { conversionOf, type DisplayUnits } from '../../../shared/units/display';
import { inputText, numberText, quantityText } from '../../../shared/units/format';
import type { Band } from '../../../shared/scenario/limitBands';
import { say } from '../../../shared/words/verdict';
import { lineOf } from '../../../shared/verdict/lineResult';
import { dayOf } from '../../../shared/verdict/measures';
import type { Verdict } from '../../../shared/verdict/verdict';
import { lengthText } from '../texts';

/** A drift this large within the band is not called holding, dKH. */
const DRIFT = 0.6;

const said = say.alkalinity;

/** What alkalinity does, in the words of a headline. */
export function alkalinityPart(
  band: Band,
  { hours, lines, startDkh: first, endDkh: end }: Verdict,
  display: DisplayUnits,
): string {
  const number = (dkh: number) => numberText(dkh, 1, 'dKH', display);
  const whole = (dkh: number) => quantityText(dkh, 1, 'dKH', display);
  const limit = (dkh: number) => inputText(dkh, 1, 'dKH', display);
  const { unit } = conversionOf('dKH', display);
  const length = lengthText(hours);
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
    return (end > first ? said.rises : said.falls)(
      number(first),
      whole(end),
      length,
      `${limit(band.low)}–${limit(band.high)}`,
    );
  }
  const [low, high] = [number(below.worst), number(above.worst)];
  const range = low === high ? whole(above.worst) : `${low}–${whole(above.worst)}`;
  return said.holds(range, length);
}
