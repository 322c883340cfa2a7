import type { Judgement } from '../../../shared/log/judge';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/logPage';

const { judged } = say;
const UNLIKELY = 2;
const NOT_CHANCE = 3;

const words = (z: number): string =>
  Math.abs(z) <= UNLIKELY
    ? judged.withinNoise
    : Math.abs(z) <= NOT_CHANCE
      ? judged[z < 0 ? 'lower' : 'higher']
      : judged[z < 0 ? 'farBelow' : 'farAbove'];

/** A reading held against what was expected of it. */
export const judgedSentence = (
  readDkh: number,
  { expectedDkh, giveOrTakeDkh, standardised }: Judgement,
): string =>
  judged.sentence(
    figure(readDkh, 1),
    figure(expectedDkh, 1),
    figure(giveOrTakeDkh, 1),
    words(standardised),
  );
