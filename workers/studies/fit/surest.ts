import { likeliest, type Shared } from './tried';

/** Something is spoken of when nothing else is half as likely. */
const SURE = 0.67;

/** The likeliest of those that are of a kind, where that kind is surer than all else. */
export function surest(all: readonly Shared[], is: (one: Shared) => boolean): Shared | undefined {
  const own = all.filter(is);
  return own.reduce((sum, { share }) => sum + share, 0) < SURE ? undefined : likeliest(own);
}
