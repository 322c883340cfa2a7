import { newestOf } from '../../../shared/log/newest';
import { spokenDay } from '../../../shared/log/spokenTime';
import { say } from '../../../shared/words/turn';
import { levelBy, strayDkh } from '../../ask/testsSooner';
import { waitsFor, type Around } from './known';
import { dkhText } from './texts';

/** The answer first, then what comes with it; each a sentence or two. */
export interface Sentences {
  readonly headline: string;
  readonly more: readonly string[];
}

/**
 * Why a test comes before anything is turned or poured, and what it would be by what is known;
 * undefined where nothing waits for one.
 */
export function testFirst(around: Around, wouldBe: string): Sentences | undefined {
  const { readings, answer, turnedAt } = around;
  const newest = newestOf(readings, 'alkalinityDkh');
  const waits = waitsFor(around);
  if (!newest || !answer) return undefined;
  const read = spokenDay(newest.at);
  if (waits === 'test') {
    return { headline: say.testFirst(read), more: [say.byThatReading(wouldBe)] };
  }
  // What was to be poured with the last turn would be poured twice.
  if (waits === 'turned') {
    return { headline: say.turnedSince(spokenDay(turnedAt!), read), more: [] };
  }
  if (waits === 'leapt') return { headline: say.leapt, more: [say.byThatLevel(wouldBe)] };
  if (waits !== 'level') return undefined;
  const level = [dkhText(answer.fit.now.dkh), dkhText(levelBy(answer))] as const;
  const stray = strayDkh(answer);
  return stray === undefined
    ? { headline: say.torn(...level), more: [say.byThatLevel(wouldBe)] }
    : { headline: say.stray(dkhText(stray), ...level), more: [] };
}
