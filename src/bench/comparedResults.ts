import { usualDisplay, type DisplayUnits } from '../../shared/units/display';
import { numberText, quantityText, withDecimal } from '../../shared/units/format';
import { say as words } from '../../shared/words/folds';
import type { ColumnId } from '../../shared/trace/columns';
import { lineOf } from '../../shared/verdict/lineResult';
import { highest, lastOf, lowest } from '../../shared/verdict/measures';
import type { Outcome } from '../../shared/verdict/outcome';
import { phText } from '../say/texts';

const say = words.differ;

export interface ComparedResult {
  readonly title: string;
  readonly before: string;
  readonly after: string;
}

type Write = (outcome: Outcome, display: DisplayUnits) => string;

const range =
  (id: ColumnId, text: (value: number, display: DisplayUnits) => string): Write =>
  ({ trace }, display) =>
    say.range(text(lowest(trace, id).value, display), text(highest(trace, id).value, display));
const end =
  (id: ColumnId, digits: number, unit: string): Write =>
  ({ trace }, display) =>
    quantityText(lastOf(trace, id), digits, unit, display);

const results: readonly (readonly [string, Write])[] = [
  [
    say.alkalinityRange,
    range('alkalinity_dkh', (dkh, display) => numberText(dkh, 2, 'dKH', display)),
  ],
  [say.alkalinityEnd, end('alkalinity_dkh', 2, 'dKH')],
  [
    say.dailyChange,
    ({ lines }, display) =>
      quantityText(lineOf(lines, 'alkalinityChange').worst, 2, 'dKH', display),
  ],
  [say.phRange, range('ph_nbs', (ph, display) => withDecimal(phText(ph), display))],
  [say.calciumEnd, end('calcium_mg_l', 0, 'mg/L')],
  [say.salinityEnd, end('salinity_ppt', 2, 'ppt')],
];

/** What two trials come to, side by side; nothing until both have run. */
export const comparedResults = (
  before: Outcome | undefined,
  after: Outcome | undefined,
  display: DisplayUnits = usualDisplay,
): ComparedResult[] =>
  before && after
    ? results.map(([title, text]) => ({
        title,
        before: text(before, display),
        after: text(after, display),
      }))
    : [];
