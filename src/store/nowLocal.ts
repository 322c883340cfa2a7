import { localTimeOf } from '../../shared/log/localTime';

/** This minute by the clock on the wall. */
export function nowLocal(): string {
  const now = new Date();
  return localTimeOf(now.getTime() / 3_600_000 - now.getTimezoneOffset() / 60);
}
