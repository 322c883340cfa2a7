import type { TurnTold } from '../../ask/outcome';
import type { planAsked } from '../planAsked';

/** The turn that its panel shows, and what it was asked with: whoever asks the same need not work it out again. */
export interface ToldTurn {
  readonly asked: ReturnType<typeof planAsked>;
  readonly told: TurnTold;
}

/** The turn that was told for just this question; undefined where it was told for another, or not yet. */
export const toldFor = (
  asked: ToldTurn['asked'],
  turn: ToldTurn | undefined,
): TurnTold | undefined =>
  turn && JSON.stringify(turn.asked) === JSON.stringify(asked) ? turn.told : undefined;
