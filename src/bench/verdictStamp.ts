import { stampedLine } from '../say/verdict/stampedLine';
import { lineTexts } from '../say/lineTexts';
import { dayOf } from '../../shared/verdict/measures';
import { say as words } from '../../shared/words/bench';
import type { Verdict } from '../../shared/verdict/verdict';

interface VerdictStamp {
  readonly stamp: string;
  readonly outside: boolean;
}

/** How a trial stands against the keeper's limits, in a few words; `stoppedH` where it ended before its time. */
export function verdictStamp(verdict: Verdict, stoppedH: number | undefined): VerdictStamp {
  const say = words.verdict;
  const outside = !verdict.insideLimits;
  const first = stampedLine(verdict.broken);
  if (!outside) return { stamp: say.stampInside, outside };
  if (!first) return { stamp: say.stampStops(String(dayOf(stoppedH ?? 0))), outside };
  const { name } = lineTexts[first.quantity];
  return { stamp: say.stampOutside(name, String(dayOf(first.firstH!))), outside };
}
