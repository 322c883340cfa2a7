import fc from 'fast-check';
import { localTimeOf } from '../../shared/log/localTime';
import {
  readingField,
  readingNames,
  saysSomething,
  type Reading,
  type ReadingName,
} from '../../shared/log/reading';

const START_H = 20_454 * 24;

/** Text as a keeper may type it: commas, quotes, line ends and letters of any kind; never blank. */
const anyText = (max: number) =>
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 20 })
    .map((text) => `${text}“ "a", b;\nc`.slice(0, max))
    .filter((text) => text.trim() !== '');

function anyOf(name: ReadingName): fc.Arbitrary<unknown> {
  const { quantity, options } = readingField(name);
  if (name === 'at')
    return fc.integer({ min: 0, max: 525_600 }).map((m) => localTimeOf(START_H + m / 60));
  // Nobody types −0, and a file gives it back as 0.
  if (quantity)
    return fc
      .double({ min: quantity.min, max: quantity.max, noNaN: true })
      .map((value) => value + 0);
  return options.length > 0 ? fc.constantFrom(...options) : anyText(40);
}

/** Any line that the schema of a reading admits. */
export const anyReading: fc.Arbitrary<Reading> = fc
  .record(Object.fromEntries(readingNames.map((name) => [name, anyOf(name)])), {
    requiredKeys: ['at'],
  })
  .map((raw) => raw as unknown as Reading)
  .filter(saysSomething);
