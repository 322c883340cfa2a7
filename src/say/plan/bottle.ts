import type { BottleDump } from '../../../shared/recipe/bottleDump';
import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';

const down = (value: number, digits: number) => Math.floor(value * 10 ** digits) / 10 ** digits;

/** What a stuck dosing pump does, and how full its bottle may be. */
export const bottleSentence = (
  { name, endDkh, minutes, fillL, days }: BottleDump,
  { limits }: Scenario,
): string =>
  say.offer.ifPumpSticks(
    name,
    figure(endDkh, 0),
    figure(limits.alkalinityHighDkh),
    figure(down(minutes, 0)),
    figure(down(fillL * 1000, 0)),
    figure(down(days, 1)),
  );
