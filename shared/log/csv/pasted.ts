import { hoursOf, localTimeOf } from '../localTime';
import { bareList } from './bareList';
import { ourHeaders } from './columns';
import { numbered, readMoment } from './dates';
import type { CsvRows } from './importLog';

const DAY = String.raw`\d[\d./-]*\d\.?|\d{1,2}(?:\.|st|nd|rd|th)`;
const CLOCK = String.raw`(?:um |at )?\d{1,2}(?:[:.h]\d{2})?(?: ?[ap]\.?m\.?| ?uhr|(?<=[:.h]\d{2}))`;
const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
const BETWEEN = String.raw`(?:[\s,;:|]+|\s+[-–—=]\s+)`;
const UNIT = String.raw`(?: ?°?(?:dK?|K)H)?`;
/** "2026-03-01 8.4", "1.3.2026 9:00 Uhr; 8,4 dKH": a day, perhaps a time, and one number. */
const DAY_AND_NUMBER = new RegExp(
  `^(${DAY})(?:(?:T|[\\s,;]+)(${CLOCK}))?${BETWEEN}(${NUMBER})${UNIT}$`,
  'i',
);
/** "from 21.10.2026, 09:00: 8.4 8.1 8.2", "sechs Werte ab dem 21., 9 Uhr: 8,4; 8,1": a value a day. */
const LIST = new RegExp(
  `^(?:\\S+ (?:values|tests|werte|messwerte|tests) )?(?:from|since|ab|seit|vom)(?: the| dem)? ` +
    `(${DAY})(?:[\\s,;]+(${CLOCK}))?\\s*[:,]?\\s+` +
    `(${NUMBER}(?:(?:\\s*;\\s*|,?\\s+)${NUMBER})+)${UNIT}$`,
  'i',
);

/** No alkalinity has thousands: a comma is its decimal mark, whatever other lines use. */
const pointed = (number: string): string => number.replace(',', '.');

const ALONE = /^(\d{1,2})(?:st|nd|rd|th|\.)$/i;
/** Without its last dot “8.4” is a number. */
const WITH_MONTH = /^(\d{1,2})(?:(\.)(\d{1,2})\.|\/(\d{1,2}))$/;

/** Day and month of what was typed without a year; the month may be left out, too. */
function dayAndMonth(typed: string): readonly [day: number, month?: number] | undefined {
  const alone = ALONE.exec(typed);
  if (alone) return [Number(alone[1])];
  const [, first, dot, afterDot, afterSlash] = WITH_MONTH.exec(typed) ?? [];
  if (first === undefined) return undefined;
  const [a, b] = [Number(first), Number(afterDot ?? afterSlash)];
  // Dots are day first; what may be either is left to be refused.
  if (dot !== undefined || a > 12) return [a, b];
  return b > 12 ? [b, a] : undefined;
}

/** A day without its year, or its month, is the latest that has been. */
function completed(typed: string, now: string): string {
  const [day, month] = dayAndMonth(typed) ?? [];
  if (day === undefined) return typed;
  const [year, thisMonth] = [Number(now.slice(0, 4)), Number(now.slice(5, 7))];
  // A leap day may lie eight years back.
  for (let back = 0; back <= 8 * 12; back++) {
    const months = year * 12 + thisMonth - 1 - back;
    const [y, m] = [Math.floor(months / 12), (months % 12) + 1];
    if (month !== undefined && month !== m) continue;
    const found = readMoment(`${y}-${m}-${day}`, '', 'dmy');
    if (found !== undefined && found.slice(0, 10) <= now.slice(0, 10)) return found.slice(0, 10);
  }
  return typed;
}

/** One line as rows of a moment and a number: several where it lists a value a day. */
function rowsOf(typed: string, now: string): string[][] | undefined {
  if (typed === '') return [[]];
  const line = numbered(typed);
  const one = DAY_AND_NUMBER.exec(line);
  if (one) {
    const [, day = '', clock = '', number = ''] = one;
    return [[`${completed(day, now)} ${clock}`.trim(), pointed(number)]];
  }
  const list = LIST.exec(line);
  if (!list) return undefined;
  const [, day = '', clock = '', numbers = ''] = list;
  const first = readMoment(`${completed(day, now)} ${clock}`.trim(), '', 'dmy');
  if (first === undefined) return undefined;
  return numbers
    .split(/\s*;\s*|,?\s+/)
    .map((number, i) => [localTimeOf(hoursOf(first) + 24 * i).replace('T', ' '), pointed(number)]);
}

/** Lines without a header, and what was typed of each row's line: what is refused is told by it. */
export interface Pasted {
  readonly rows: CsvRows;
  /** On which line each row after the header was typed. */
  readonly lines: readonly number[];
  /** Whether no day was typed: one a day, the last now. */
  readonly onePerDay?: boolean;
}

/**
 * Lines of a day and an alkalinity without a header, as rows under one of ours; what among them is no
 * such line is kept as a row that says so when it is read. `now` is a local time: a day without its month
 * or year is the latest that has been.
 */
export function linesRead(text: string, now: string): Pasted {
  const rows = text.split(/\r\n|\r|\n/).flatMap((typed, i) => {
    const line = typed.trim();
    return (rowsOf(line, now) ?? [[line, '']]).map((cells) => ({ cells, line: i + 1 }));
  });
  return {
    rows: [ourHeaders.slice(0, 2), ...rows.map(({ cells }) => cells)],
    lines: rows.map(({ line }) => line),
  };
}

/** The same; undefined for a text whose first line is none of them, and that may be a table. */
export function pastedRows(text: string, now: string): Pasted | undefined {
  const listed = bareList(text, now);
  if (listed) {
    return {
      rows: [ourHeaders.slice(0, 2), ...listed.map(({ cells }) => [...cells])],
      lines: listed.map(({ line }) => line),
      onePerDay: true,
    };
  }
  const first = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '');
  return first === undefined || rowsOf(first.trim(), now) === undefined
    ? undefined
    : linesRead(text, now);
}
