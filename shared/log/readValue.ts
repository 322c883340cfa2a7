import { additiveIds, additives } from '../species/additives';
import { toFigures } from '../units/digits';
import { testUnit } from '../units/testUnits';
import { typedNumber } from '../units/typedNumber';
import { say as csv } from '../words/csv';
import { figure } from '../words/figure';
import { readNumber, type DecimalMark } from './csv/numbers';
import { say as page } from '../words/logPage';
import { eventIds, ownUnit, readingField, type EventId, type ReadingName } from './reading';

const say = csv.rows;
export const { refuse } = say;

/** "<0.02": less than the kit shows is no number. */
const BELOW = /^\s*[<≤]/;

/** A number in the unit beside it, turned into the field's own; or why not. */
export function readValue(
  name: ReadingName,
  text: string,
  beside: string | undefined,
  decimal: DecimalMark,
): number | string {
  const own = ownUnit(name)!;
  const { title, quantity } = readingField(name);
  if (BELOW.test(text)) return refuse(title, text, say.belowTheKit);
  const { digits, unit: named } = typedNumber(text);
  const typed = readNumber(digits, decimal);
  const unit = testUnit(own, named || (beside ?? own));
  if (typed === undefined || (named !== '' && !unit))
    return refuse(title, text, decimal === '.' ? say.numberWithPoint : say.numberWithComma);
  let value: number;
  try {
    value = toFigures(unit?.toOwn(typed) ?? NaN, 12);
  } catch (error) {
    return say.cannotBe(title, text, unit?.name ?? own, (error as Error).message);
  }
  const { min, max } = quantity!;
  if (value >= min && value <= max) return unit?.name === own ? typed : value;
  const mistake = quantity!.mistake?.(value);
  return (
    refuse(title, text, say.range(figure(min), figure(max), own)) + (mistake ? ` ${mistake}.` : '')
  );
}

/** What was done by its name here or its word. */
const eventOf = (text: string): EventId | undefined => {
  const wanted = text.trim().toLowerCase();
  return eventIds.find((id) => [id, page.events[id]].some((name) => name.toLowerCase() === wanted));
};

/** An additive by its name here, its label or its formula. */
function additiveOf(text: string): string | undefined {
  const wanted = text.trim().toLowerCase();
  return additiveIds.find((id) =>
    [id, additives[id].label, additives[id].formula].some((name) => name.toLowerCase() === wanted),
  );
}

/** What is typed by a name of ours, a word or a label; undefined for whatever nobody knows. */
export const namedBy: Partial<Record<string, (text: string) => string | undefined>> = {
  additive: additiveOf,
  event: eventOf,
};
