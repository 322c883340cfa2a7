import { say } from '../../../shared/words/turn';
import { habitDoses } from '../fit/answer';
import type { Around } from './known';

/** That what is poured in by hand goes on, but for the one that is turned itself; empty where nothing does. */
export function handSentences({ answer }: Around, turned?: { additive: string }): string[] {
  const others = (answer?.habits.doses ?? []).filter(
    ({ additive }) => additive !== turned?.additive,
  );
  return others.length === 0 ? [] : [say.handGoesOn(habitDoses(others))];
}
