import { beyondText } from '../drill/boughtText';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { lineValue } from '../lineTexts';
import { dayOf } from '../../../shared/verdict/measures';
import { figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold } from '../../ask/outcome';

/** What ends a promise, on which day, and what passes which limit after that. */
interface WhyNot {
  readonly why: string;
  readonly day: number;
  readonly then?: WhyNot | undefined;
}

function passesWhat(breach: LineResult): WhyNot {
  const { quantity, worst, firstH } = breach;
  const value = figureText(lineValue(quantity, worst));
  return { why: say.passes(beyondText(breach), value), day: dayOf(firstH!) };
}

/** Why it does not last: what passes which limit or stands empty first, and how far. */
export function whyNot(provided: AwayTold['away']['provided']): WhyNot {
  const { breach, empties, insideDays, scenario } = provided;
  const emptyH = (empties?.days ?? Infinity) * 24;
  if (empties && emptyH <= (breach?.firstH ?? Infinity)) {
    const { pump } = empties;
    const vessel =
      pump === undefined ? say.panel.reservoirIs : say.panel.bottleIs(scenario.dosers[pump]!.name);
    return { why: say.empties(vessel), day: dayOf(emptyH), then: breach && passesWhat(breach) };
  }
  return breach ? passesWhat(breach) : { why: say.leavesRange, day: insideDays + 1 };
}

export function wayOutText({ wayOut, asked, provided, comesDays }: AwayTold['away']): string {
  if (wayOut?.kind !== 'fewerDays') return say.wayOut[wayOut?.kind ?? 'firstOfAll'];
  if (!asked) return say.wayOut.fewerDays(wayOut.days);
  const { why, day } = whyNot(provided);
  return say.wayOut.withVisits(wayOut.days, comesDays, why, String(day));
}
