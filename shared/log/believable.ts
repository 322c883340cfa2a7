import { hoursOf, localTimeOf } from './localTime';

/** The clock beside the tank may be off, or in another time zone. */
const CLOCK_SLACK_H = 24;
/** Older is a mistyped year, as good as surely. */
const OLDEST_YEARS = 30;

/** The first and the last moment that a line of a log can be of. */
export const believable = (now: string): { readonly first: string; readonly last: string } => ({
  first: localTimeOf(hoursOf(now) - OLDEST_YEARS * 365.25 * 24),
  last: localTimeOf(hoursOf(now) + CLOCK_SLACK_H),
});
