/** The clock beside a tank as text, "2026-03-04T10:30": no zone, since nobody notes one. */
const LOCAL_TIME = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/;

/** Days since 1970-01-01 in the proleptic Gregorian calendar (algorithm of H. Hinnant). */
function dayNumber(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

function dateOf(dayNumber: number): { year: number; month: number; day: number } {
  const z = dayNumber + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36524) -
      Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const day = dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

const two = (n: number): string => String(n).padStart(2, '0');

/** A local time as text, or nothing when the calendar or the clock has no such moment. */
export function localTime(
  year: number,
  month: number,
  day: number,
  hour = 0,
  minute = 0,
): string | undefined {
  if (year < 1900 || year > 2999 || hour > 23 || minute > 59) return undefined;
  const back = dateOf(dayNumber(year, month, day));
  if (back.month !== month || back.day !== day) return undefined;
  return `${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

export function isLocalTime(text: string): boolean {
  const match = LOCAL_TIME.exec(text);
  if (!match) return false;
  const [year, month, day, hour, minute] = match.slice(1).map(Number);
  return localTime(year!, month!, day!, hour, minute) === text;
}

/** Hours since the start of 1970 by the same clock; the hour that summer time shifts is neglected. */
export function hoursOf(local: string): number {
  const [year, month, day, hour, minute] = local.split(/\D/).map(Number);
  return dayNumber(year!, month!, day!) * 24 + hour! + minute! / 60;
}

/** The moment so many hours since the start of 1970, to the minute. */
export function localTimeOf(hours: number): string {
  const minutes = Math.round(hours * 60);
  const day = Math.floor(minutes / 1440);
  const { year, month, day: dayOfMonth } = dateOf(day);
  const rest = minutes - day * 1440;
  return `${year}-${two(month)}-${two(dayOfMonth)}T${two(Math.floor(rest / 60))}:${two(rest % 60)}`;
}
