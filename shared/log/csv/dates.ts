import { localTime } from '../localTime';

/** How a file orders a date of three numbers that is not ISO. */
export type DayOrder = 'dmy' | 'mdy';

const ISO = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/;
const LOCAL = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})\.?$/;
const CLOCK =
  /^(?:um|at)?\s*(\d{1,2})[:.h](\d{2})(?::\d{2}(?:\.\d+)?)?\s*(?:([ap])\.?m\.?|uhr|h)?$/i;
/** "9 Uhr", "9 h", "9 am": a number alone is no clock. */
const WHOLE_HOUR = /^(?:um|at)?\s*(\d{1,2})\s*(?:([ap])\.?m\.?|uhr|h)$/i;
/** "Sat 17.10.2026", "Samstag, 17. Oktober 2026". */
const WEEKDAY =
  /^\s*(?:mon?|tue?s?|die?|wed?n?e?s?|mi|thu?r?s?|do|fri?|sat?u?r?|so|sun?)[a-zäöü]*[.,]?\s+(?=\d)/i;
const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const GERMAN_MONTHS: Readonly<Record<string, string>> = {
  mär: 'mar',
  mae: 'mar',
  mai: 'may',
  okt: 'oct',
  dez: 'dec',
};
const DAY_MONTH = /(\d{1,2})(?:\.|st|nd|rd|th)?\s+([a-zä]{3,9})\.?,?\s+(\d{4})/i;
const MONTH_DAY = /([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})/i;

function monthOf(name: string): number | undefined {
  const three = name.toLowerCase().slice(0, 3);
  const month = MONTHS.indexOf(GERMAN_MONTHS[three] ?? three) + 1;
  return month > 0 ? month : undefined;
}

/** A month by its name as a number, "17. Oktober 2026" as "2026-10-17"; a weekday goes. */
export function numbered(cell: string): string {
  const bare = cell.replace(WEEKDAY, '');
  const put = (whole: string, day: string, name: string, year: string) => {
    const month = monthOf(name);
    return month ? `${year}-${month}-${day}` : whole;
  };
  return bare
    .replace(DAY_MONTH, (whole, day: string, name: string, year: string) =>
      put(whole, day, name, year),
    )
    .replace(MONTH_DAY, (whole, name: string, day: string, year: string) =>
      put(whole, day, name, year),
    );
}
const ZONE = /(Z|[+-]\d{2}:?\d{2})$/;

/** "2026-03-04T10:30", "4.3.2026 10:30", "3/4/26, 10:30 pm" → a date and a clock. */
function parts(cell: string): { date: string; clock: string } {
  const [date = '', ...clock] = numbered(cell)
    .trim()
    .split(/T(?=\d)|[\s]+/);
  return { date: date.replace(/,$/, ''), clock: clock.join(' ') };
}

/** What a cell alone says: dots are day first, a number above 12 cannot be a month. */
function evidence(cell: string): DayOrder | undefined {
  const [, first, separator, second] = LOCAL.exec(parts(cell).date) ?? [];
  if (first === undefined) return undefined;
  if (separator === '.' || Number(first) > 12) return 'dmy';
  return Number(second) > 12 ? 'mdy' : undefined;
}

/** The order of day and month in a file; undefined when its dates do not tell, or contradict. */
export function dayOrder(cells: readonly string[]): DayOrder | undefined {
  const seen = new Set(cells.map(evidence));
  seen.delete(undefined);
  return seen.size === 1 ? [...seen][0] : undefined;
}

/** Whether a date depends on the order of day and month. */
export const dependsOnOrder = (cell: string): boolean => LOCAL.test(parts(cell).date);

function readDate(text: string, order: DayOrder): [number, number, number] | undefined {
  const iso = ISO.exec(text);
  if (iso) return [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  const local = LOCAL.exec(text);
  if (!local) return undefined;
  const [, a, , b, y] = local;
  const year = Number(y) < 100 ? 2000 + Number(y) : Number(y);
  const [day, month] = order === 'dmy' ? [a, b] : [b, a];
  return [year, Number(month), Number(day)];
}

function readClock(text: string): [number, number] | undefined {
  const bare = text.trim();
  const whole = WHOLE_HOUR.exec(bare);
  const [, hour, minute, half] = whole ? ['', whole[1], '0', whole[2]] : (CLOCK.exec(bare) ?? []);
  if (hour === undefined) return undefined;
  if (half === undefined) return [Number(hour), Number(minute)];
  if (Number(hour) < 1 || Number(hour) > 12) return undefined;
  return [(Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0), Number(minute)];
}

/** Noon stands for a day without a clock. */
const NOON: [number, number] = [12, 0];

/** A moment from a cell that may hold both, and from one that holds the clock alone. */
export function readMoment(cell: string, clockCell: string, order: DayOrder): string | undefined {
  const { date, clock } = parts(cell);
  const day = readDate(date, order);
  const clockText = (clockCell.trim() || clock).replace(ZONE, '');
  const time = clockText === '' ? NOON : readClock(clockText);
  return day && time && localTime(...day, ...time);
}
