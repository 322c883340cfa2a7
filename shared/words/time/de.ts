import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  onDay: (day, clock) => `Tag ${day}, ${clock}`,
  minutes: (minutes) => `${minutes} min`,
  hours: (hours) => `${hours} h`,
  days: (days) => `${days} d`,
  dateAndClock: (date, clock) => `${date}, ${clock}`,
};
